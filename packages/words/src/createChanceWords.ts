/** Words of chances, in a file of their own because the first sight of the page does not need them. */
import type { Rig } from "@secondline/rig";
import type {
  Chances,
  NoChances,
  Outcome,
  PartChance,
  Probability,
  ScatterShare,
  StudyProgress,
  UncertainInput,
} from "@secondline/scenarios";
import { chanceRange } from "./chanceNumbers.ts";
import * as chances from "./chanceWords.ts";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";

export { worthARow } from "./chanceWords.ts";
export type ChanceWords = ReturnType<typeof createChanceWords>;

export function createChanceWords(language: Language) {
  const say = sayLaterIn(language);
  return {
    say,
    chanceRange: (value: Probability) => chanceRange(say, value),
    chances: (rig: Rig, found: Chances) => chances.chanceSentence(language, rig, found),
    chancePart: (rig: Rig, part: PartChance) => chances.chancePart(language, rig, part),
    chanceRest: (parts: readonly PartChance[]) => chances.restText(language, parts),
    chanceWorking: (rig: Rig, progress: Pick<StudyProgress, "doing">) => chances.workingText(language, rig, progress),
    chanceGlance: (rig: Rig, outcome: Outcome, most: number) => chances.glanceText(language, rig, outcome, most),
    chanceShare: (share: ScatterShare) => chances.shareText(language, share),
    shareName: (share: ScatterShare) => chances.shareName(language, share),
    sharesTitle: (rig: Rig, found: Chances) => chances.sharesTitle(language, rig, found.shares),
    chanceInput: (input: UncertainInput) => chances.inputTexts(language, input),
    chanceGrounds: (rig: Rig, found: Chances) => chances.chanceGrounds(language, rig, found),
    chanceCautions: (rig: Rig, found: Chances) => chances.chanceCautions(language, rig, found),
    ownChanceCautions: (rig: Rig, found: Chances) => chances.ownChanceCautions(language, rig, found),
    noChances: (rig: Rig, why: NoChances) => chances.noChancesText(language, rig, why),
  };
}

export const englishChanceWords = createChanceWords(english);
