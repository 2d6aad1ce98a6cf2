/** What every part carries against what it holds, and what its strength rests on. */
import { type Basis, formatForce, formatLength, formatRatio } from "@secondline/rig";
import type { AppliedFactor, Outcome, PartOutcome, Verdict } from "../outcome.ts";
import { type Content, type Html, tableOf, tag } from "./html.ts";

const MARK: Readonly<Record<Verdict, string>> = { holds: "●", thin: "▲", fails: "✕" };

/** The verdict's shape; the word stands beside it. */
export const verdictMark = (verdict: Verdict): Html => tag("span", MARK[verdict], { class: `verdict ${verdict}` });
const verdictWord = (verdict: Verdict) => tag("span", `${MARK[verdict]} ${verdict}`, { class: `verdict ${verdict}` });

export function partsTable(outcome: Outcome): Html {
  const rows = outcome.parts.map((part): Content[] => [
    nameOf(part),
    load(part),
    `${formatForce(part.strength)} (${formatForce(part.strength5)})`,
    `${formatRatio(part.margin)} (${formatRatio(part.margin5)})`,
    verdictWord(part.verdict),
    outcome.whatIfs[part.whatIf]!.title,
  ]);
  const caption =
    "From the harness to the rock. Strength and margin: central value, in brackets the value that nineteen of twenty such parts reach. Loads as a load cell reports them (CFC 60).";
  return tableOf(
    outcome.parts.some(estimated) ? `${caption} ${ESTIMATED}` : caption,
    ["Part", "Load", "Strength", "Margin", "Verdict", "Worst in"],
    rows,
    [1, 2, 3],
  );
}

function nameOf(part: PartOutcome): string {
  const { weakest } = part;
  if (!weakest) return part.name;
  if (part.id === "leash") return part.name;
  return `${part.name}, ${weakest.reason} at ${formatLength(weakest.at)} from A`;
}

const ESTIMATED =
  "±: how far the mesh may put a load off, from a second mesh; margins are of the load itself, the verdict is for its upper end.";
const estimated = (part: PartOutcome): boolean =>
  part.loadUncertainty !== undefined || part.uncertaintyUnknown === true;

function load(part: PartOutcome): string {
  const { loadUncertainty } = part;
  const known = loadUncertainty === undefined ? "" : ` ± ${formatForce(loadUncertainty)}`;
  const uncertainty = part.uncertaintyUnknown ? " ± not known" : known;
  return `${part.parts ? "at least " : ""}${formatForce(part.load)}${uncertainty}`;
}

/** Rated strength times factors, part by part, with the numbers of the bases they rest on, and those bases once. */
export function strengthSection(outcome: Outcome): readonly Html[] {
  const numbers = new Map<string, number>();
  const numberOf = (basis: Basis) => {
    const text = `${basis.kind}: ${basis.note}`;
    const number = numbers.get(text) ?? numbers.size + 1;
    numbers.set(text, number);
    return number;
  };
  const rows = outcome.parts.map((part): Content[] => [
    part.name,
    formatForce(part.rated),
    part.factors.map(factorText).join(", ") || "none",
    part.bases.map(numberOf).join(", "),
  ]);
  return [
    tableOf(
      "Strength is the rated one times every factor, each with its scatter. The last column names the bases below, weakest first.",
      ["Part", "Rated", "Factors", "Bases"],
      rows,
      [1],
    ),
    tag(
      "ol",
      [...numbers.keys()].map((text) => tag("li", text)),
      { class: "bases" },
    ),
  ];
}

const factorText = ({ name, value, spread }: AppliedFactor) =>
  `${name} × ${formatRatio(value)} ± ${Math.round(100 * spread)} %`;
