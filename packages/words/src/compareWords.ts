/** Labels and figures of a comparison. */
import type { Rig } from "@secondline/rig";
import type { ComparisonRow } from "@secondline/scenarios";
import type { Language } from "./language.ts";
import { type LaterSay, sayLaterIn } from "./laterLanguage.ts";
import { partName } from "./partNames.ts";
import { dropIn, heightIn, loadIn, margin } from "./quantity.ts";
import { bandText } from "./tableWords.ts";

/** `rig`: one of the compared rigs; its names of parts are used. */
export function rowLabel(language: Language, rig: Rig, { subject }: ComparisonRow): string {
  const say = sayLaterIn(language);
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

const withBand = (say: LaterSay, value: string, band: readonly [number, number] | undefined): string =>
  band ? say("compare.band", { value, band: bandText(say, band) }) : value;

/**
 * One figure of a row; a part that is not loaded has words instead of a margin. If runs end with the walker lost, parts were
 * not loaded as much as they might be: then "at least" for loads and drops, "at most" for margins and heights left.
 */
export function rowValue(language: Language, row: ComparisonRow, layout: number): string {
  const say = sayLaterIn(language);
  const value = row.values[layout];
  if (row.verdicts?.[layout] === "notLoaded") return say("part.verdict.notLoaded");
  if (value === undefined) return "–";
  const isBound = row.bounds?.[layout] === true;
  switch (row.quantity) {
    case "load":
      return isBound
        ? say("compare.atLeast", { value: loadIn(value) })
        : withBand(say, loadIn(value), row.intervals?.[layout]);
    case "margin":
      return isBound ? say("compare.atMost", { value: margin(value) }) : margin(value);
    case "length":
      if (row.subject.kind === "clearance") {
        // A height left is never below 0.
        return isBound && value > 0 ? say("compare.atMost", { value: heightIn(value) }) : heightIn(value);
      }
      return isBound ? say("compare.atLeast", { value: dropIn(value) }) : dropIn(value);
  }
}
