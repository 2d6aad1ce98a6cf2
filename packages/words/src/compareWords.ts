/** Labels and figures of a comparison. */
import type { Rig } from "@secondline/rig";
import type { ComparisonRow } from "@secondline/scenarios";
import { type Language, sayIn } from "./language.ts";
import { partName } from "./partNames.ts";
import { dropIn, heightIn, loadIn, margin } from "./quantity.ts";

/** `rig`: one of those compared; parts are named as in it. */
export function rowLabel(language: Language, rig: Rig, { subject }: ComparisonRow): string {
  const say = sayIn(language);
  switch (subject.kind) {
    case "margin":
      return say("compare.margin", { part: partName(say, rig, subject.part) });
    case "walker":
    case "mainEnd":
    case "backupEnd":
    case "drop":
      return say(`compare.${subject.kind}.${subject.class}`);
    default:
      return say(`compare.${subject.kind}`);
  }
}

/** One figure of a row; a part that is not loaded says so instead of a margin. */
export function rowValue(language: Language, row: ComparisonRow, layout: number): string {
  const value = row.values[layout];
  if (row.verdicts?.[layout] === "notLoaded") return sayIn(language)("part.verdict.notLoaded");
  if (value === undefined) return "–";
  switch (row.quantity) {
    case "load":
      return loadIn(value);
    case "margin":
      return margin(value);
    case "length":
      return row.subject.kind === "clearance" ? heightIn(value) : dropIn(value);
  }
}
