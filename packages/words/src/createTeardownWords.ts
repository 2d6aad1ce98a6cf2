/** Words of a teardown, in a file of their own because few pages need them and none at first sight. */
import type { Rig } from "@secondline/rig";
import type {
  Contradiction,
  LearntFactor,
  LearntPart,
  Piece,
  Teardown,
  TeardownBand,
  TeardownIssue,
  TeardownLearnt,
} from "@secondline/strength";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { teardownIssueTexts } from "./teardownIssueWords.ts";
import * as words from "./teardownWords.ts";

export type TeardownWords = ReturnType<typeof createTeardownWords>;

export function createTeardownWords(language: Language) {
  const say = sayLaterIn(language);
  return {
    say,
    teardownPiece: (rig: Rig, plan: Teardown, piece: Piece) => words.pieceRowOf(language, rig, plan, piece),
    teardownBand: (rig: Rig, band: TeardownBand) => words.teardownBandSentence(say, rig, band),
    teardownCannot: (rig: Rig, plan: Teardown) => words.cannotTexts(say, rig, plan),
    teardownWanted: (rig: Rig, plan: Teardown) => words.wantedText(say, rig, plan),
    teardownAssumed: (plan: Teardown) => words.assumedTexts(say, plan),
    teardownOutcomes: () => words.outcomesText(say),
    teardownIssue: (rig: Rig, on: string, issue: TeardownIssue) => teardownIssueTexts(say, rig, on, issue),
    factorLearnt: (one: LearntFactor) => words.factorLearntRow(say, one),
    contradiction: (one: Contradiction) => words.contradictionText(say, one),
    partLearnt: (rig: Rig, part: LearntPart, learnt: TeardownLearnt) => words.partLearntRow(say, rig, part, learnt),
  };
}

export const englishTeardownWords = createTeardownWords(english);
