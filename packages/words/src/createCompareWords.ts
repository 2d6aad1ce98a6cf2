/** Words of layouts side by side, in a file of their own because the first sight of the page does not need them. */
import type { Rig } from "@secondline/rig";
import type { ComparisonRow } from "@secondline/scenarios";
import { rowLabel, rowValue } from "./compareWords.ts";
import { frontierNumbers, frontierPoint, frontierSentences, sayFrontier } from "./frontierWords.ts";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";

export function createCompareWords(language: Language) {
  return {
    say: sayLaterIn(language),
    compareLabel: (rig: Rig, row: ComparisonRow) => rowLabel(language, rig, row),
    compareValue: (row: ComparisonRow, layout: number) => rowValue(language, row, layout),
    sayFrontier,
    frontierSentences,
    frontierNumbers,
    frontierPoint,
  };
}

export const englishCompareWords = createCompareWords(english);
