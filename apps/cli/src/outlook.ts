/** Until when a rig may stay up, at the present rate of use. */
import type { Outcome } from "@secondline/scenarios";
import { factorsFromLog, type PartTakeDown, type TakeDown, takeDown } from "@secondline/strength";
import type { KnownRig } from "./rigFile.ts";

/** For the central strength, and for the strength that nineteen of twenty parts reach. */
export interface Outlook {
  readonly on: string;
  /** The verdict leaves no room to say that everything keeps its margin. */
  readonly failsNow?: true;
  /** The verdict is thin: for what the strengths of these dates do not say. */
  readonly thinNow?: true;
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
  const now: Pick<Outlook, "failsNow" | "thinNow"> = doubtful
    ? { failsNow: true }
    : outcome.verdict === "thin"
      ? { thinNow: true }
      : {};
  return { on, ...now, central: of(0.5), cautious: of(0.95) };
}

/** Two sentences for the terminal and the report. */
export function outlookText(outlook: Outlook): readonly string[] {
  return [
    `Used on from ${outlook.on} as so far, by the central strengths: ${until(outlook.central, outlook)}`,
    `By the strengths that nineteen of twenty such parts reach: ${until(outlook.cautious, outlook)}`,
  ];
}

function until({ parts, already, horizon }: TakeDown, { failsNow, thinNow }: Outlook): string {
  const first = parts[0];
  if (!first) return "no date: no part has a load to judge it by.";
  if (!first.date && failsNow) return "no date: the verdict above fails or is incomplete, which wear does not change.";
  if (!first.date && thinNow) {
    return `no date up to ${horizon}, the last day looked at; but the verdict above is thin today, for what wear does not change.`;
  }
  if (!first.date) return `every part keeps the required margin until ${horizon}, the last day looked at.`;
  const part = nameOf(first);
  if (first.when === "now") return `already without the required margin: ${already.map(nameOf).join("; ")}.`;
  const then = `${part} no longer has the required margin`;
  if (failsNow)
    return `no date to wait for: the verdict above fails or is incomplete. By wear alone, from ${first.date} ${then}.`;
  return `take down before ${first.date}, when ${then}.${thinNow ? " The verdict above is thin today already." : ""}`;
}

const nameOf = ({ name, reason }: PartTakeDown): string =>
  reason === undefined || name.includes(reason) ? name : `${name} (${reason})`;
