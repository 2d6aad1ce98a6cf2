/** Words of a log of break tests, in a file of their own because the first sight of the page does not need them. */

import type { LineStock } from "@secondline/rig";
import type { BreakLogReport, BreakTest } from "@secondline/strength";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { percent, strength } from "./quantity.ts";
import { materialName } from "./stockNames.ts";

export type BreakLogWords = ReturnType<typeof createBreakLogWords>;

/** A smaller gain is no reason for a test: it would read as 0 [-]. */
const LEAST_TOLD_GAIN = 0.005;

export function createBreakLogWords(language: Language) {
  const say = sayLaterIn(language);
  /** The group of a test for people: what was pulled, of what, in which state, wet or dry. */
  const groupTitle = ({ part, material, state, wet }: BreakTest, own?: readonly LineStock[]): string =>
    say("breakLog.group", {
      part,
      material: materialName(material, own),
      state,
      wetness: say(wet ? "breakLog.wet" : "breakLog.dry"),
    });
  return {
    say,
    groupTitle,
    /** The test worth doing next, and its expected gain. `like`: a test of its group. `own`: webbings and ropes of the open rig. */
    testNext(
      { label: written, gain, share, spreadAssumed }: NonNullable<BreakLogReport["testNext"]>,
      like?: BreakTest,
      own?: readonly LineStock[],
    ): string {
      const label = like ? groupTitle(like, own) : written;
      if (share < LEAST_TOLD_GAIN) return say("breakLog.little", { label, share: percent(LEAST_TOLD_GAIN, "up") });
      const assumed = spreadAssumed ? say("breakLog.assumedSpread") : "";
      return say("breakLog.next", {
        label,
        gain: strength(gain),
        share: percent(share, "down"),
        assumed,
      });
    },
  };
}

export const englishBreakLogWords = createBreakLogWords(english);
export const { groupTitle } = englishBreakLogWords;
