/** Until when a rig may stay up, at the present rate of use. */
import type { Outcome } from "@secondline/scenarios";
import { factorsFromLog, type TakeDown, takeDown } from "@secondline/strength";
import type { KnownRig } from "./rigFile.ts";

/** For the central strength, and for the strength that nineteen of twenty parts reach. */
export interface Outlook {
  readonly on: string;
  /** The verdict leaves no room to say that everything keeps its margin. */
  readonly failsNow?: true;
  readonly central: TakeDown;
  readonly cautious: TakeDown;
}

export type DatedUse = Required<Pick<KnownRig, "rigOn" | "breakTests">>;

export function outlook(outcome: Outcome, { rigOn, breakTests }: DatedUse, on: string): Outlook {
  const factorsOf = breakTests.length > 0 ? { factorsOf: factorsFromLog(breakTests) } : {};
  const loads = Object.fromEntries(outcome.parts.map((part) => [part.id, part.load + (part.loadUncertainty ?? 0)]));
  const of = (confidence: number) =>
    takeDown({ rigOn, on, loads, requiredFactor: outcome.requiredFactor, confidence, ...factorsOf });
  const doubtful = outcome.verdict === "fails" || outcome.incomplete.length > 0;
  return { on, ...(doubtful ? { failsNow: true } : {}), central: of(0.5), cautious: of(0.95) };
}

/** Two sentences for the terminal and the report. */
export function outlookText({ on, failsNow, central, cautious }: Outlook): readonly string[] {
  return [
    `Used on from ${on} as so far, by the central strengths: ${until(central, failsNow)}`,
    `By the strengths that nineteen of twenty such parts reach: ${until(cautious, failsNow)}`,
  ];
}

function until({ parts, horizon }: TakeDown, failsNow?: true): string {
  const first = parts[0];
  if (!first?.date && failsNow) return "no date: the verdict above fails or is incomplete, which wear does not change.";
  if (!first?.date) return `every part keeps the required margin until ${horizon}, the last day looked at.`;
  const part = `${first.name}${first.reason === undefined || first.name.includes(first.reason) ? "" : ` (${first.reason})`}`;
  return first.when === "now"
    ? `already without the required margin: ${part}.`
    : `take down before ${first.date}, when ${part} no longer has the required margin.`;
}
