/** What every part carries against what it holds, and what its strength rests on. */
import { formatForce, formatLength, formatRatio } from "@secondline/rig";
import type { Outcome, PartOutcome, Verdict } from "../outcome.ts";
import { type Content, type Html, tableOf, tag } from "./html.ts";

const MARK: Readonly<Record<Verdict, string>> = { holds: "● holds", thin: "▲ thin", fails: "✕ fails" };

export const verdictMark = (verdict: Verdict): Html => tag("span", MARK[verdict], { class: `verdict ${verdict}` });

export function partsTable(outcome: Outcome): Html {
  const rows = outcome.parts.map((part): Content[] => [
    nameOf(part),
    load(part),
    `${formatForce(part.strength)} (${formatForce(part.strength5)})`,
    `${formatRatio(part.margin)} (${formatRatio(part.margin5)})`,
    verdictMark(part.verdict),
    outcome.whatIfs[part.whatIf]!.title,
  ]);
  const caption =
    "From the harness to the rock. Strength and margin: central value, in brackets the value that nineteen of twenty such parts reach. Loads as a load cell reports them (CFC 60).";
  return tableOf(caption, ["Part", "Load", "Strength", "Margin", "Verdict", "Worst in"], rows, [1, 2, 3]);
}

function nameOf(part: PartOutcome): string {
  const { weakest } = part;
  if (!weakest) return part.name;
  if (part.id === "leash") return part.name;
  return `${part.name}, ${weakest.reason} at ${formatLength(weakest.at)} from A`;
}

function load(part: PartOutcome): string {
  const uncertainty = part.loadUncertainty === undefined ? "" : ` ± ${formatForce(part.loadUncertainty)}`;
  return `${part.parts ? "at least " : ""}${formatForce(part.load)}${uncertainty}`;
}

/** Rated strength times factors, part by part, each with where it comes from. */
export function strengthTable(outcome: Outcome): Html {
  const rows = outcome.parts.map((part): Content[] => [
    part.name,
    formatForce(part.rated),
    part.factors.map((one) => `${one.name} × ${formatRatio(one.value)}`).join(", ") || "none",
    part.bases.map((basis) => `${basis.kind}: ${basis.note}`).join("; "),
  ]);
  return tableOf(
    "Strength is the rated one times every factor. A basis says where a number comes from; weakest first.",
    ["Part", "Rated", "Factors", "Bases"],
    rows,
    [1],
  );
}
