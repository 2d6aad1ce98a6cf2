/** Words of a log of break tests, in a file of their own because the first sight of the page does not need them. */

import type { BreakLogReport } from "@secondline/strength";
import { broughtIn } from "./broughtEnglish.ts";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { percent, strength } from "./quantity.ts";

export type BreakLogWords = ReturnType<typeof createBreakLogWords>;

/** A smaller gain is no reason for a test: it would read as 0 [-]. */
const LEAST_TOLD_GAIN = 0.005;

export function createBreakLogWords(language: Language) {
  const say = sayLaterIn(language);
  return {
    say,
    /** The test worth doing next, and its expected gain. */
    testNext({ label, gain, share, spreadAssumed }: NonNullable<BreakLogReport["testNext"]>): string {
      if (share < LEAST_TOLD_GAIN)
        return say("breakLog.little", { label: broughtIn(label), share: percent(LEAST_TOLD_GAIN, "up") });
      const assumed = spreadAssumed ? say("breakLog.assumedSpread") : "";
      return say("breakLog.next", {
        label: broughtIn(label),
        gain: strength(gain),
        share: percent(share, "down"),
        assumed,
      });
    },
  };
}

export const englishBreakLogWords = createBreakLogWords(english);
