/** All words in one language. A face holds one such object and makes no sentence of its own about a rig. */
import type { Basis, PartId, Rig } from "@secondline/rig";
import type {
  CautionFact,
  EventBase,
  EventClass,
  GaveWay,
  Outcome,
  PartOutcome,
  Phrase,
  Probability,
  Reason,
  Recording,
  SingleFailure,
  Trouble,
  WhatIfOutcome,
} from "@secondline/scenarios";
import { cautionTexts, generalCautions } from "./cautionWords.ts";
import { chance, chanceRange } from "./chanceNumbers.ts";
import { type Language, sayIn } from "./language.ts";
import {
  type BreaksTold,
  type Moment,
  type Moments,
  momentLabel,
  momentText,
  placedMoment,
  runSentences,
} from "./momentWords.ts";
import { partInSentence, partName, partTitle } from "./partNames.ts";
import { eventTitle, phraseText, whereText } from "./phrases.ts";
import { fateText, storySentences, troubleText } from "./storyWords.ts";
import { basisText, blankTexts, loadWithBand, partRow, singleWords, whatIfRow, whyRows } from "./tableWords.ts";
import {
  likelierFirst,
  reasonText,
  singlesText,
  takenText,
  verdictSentence,
  verdictWord,
  type Worded,
} from "./verdictWords.ts";

export type Words = ReturnType<typeof createWords>;

export function createWords(language: Language) {
  const say = sayIn(language);
  return {
    language,
    say,
    partName: (rig: Rig, id: PartId) => partName(say, rig, id),
    partTitle: (rig: Rig, part: Pick<PartOutcome, "id" | "weakest">) => partTitle(say, rig, part),
    partInSentence: (rig: Rig, part: Pick<PartOutcome, "id" | "weakest">) => partInSentence(say, rig, part),
    where: (at: number, span: number) => whereText(language, at, span),
    eventTitle: (rig: Rig, event: EventBase) => eventTitle(language, rig, event),
    phrase: (rig: Rig, phrase: Phrase) => phraseText(language, rig, phrase),
    className: (name: EventClass) => say(`class.${name}`),
    verdictWord: (outcome: Worded) => verdictWord(language, outcome),
    partVerdict: (verdict: PartOutcome["verdict"]) => say(`part.verdict.${verdict}`),
    verdict: (rig: Rig, outcome: Outcome) => verdictSentence(language, rig, outcome),
    reason: (rig: Rig, outcome: Outcome, reason: Reason) => reasonText(language, rig, outcome, reason),
    likelierFirst: (rig: Rig, outcome: Outcome) => likelierFirst(language, rig, outcome),
    singles: (rig: Rig, outcome: Pick<Outcome, "singles">) => singlesText(language, rig, outcome),
    singleRow: (one: SingleFailure) => singleWords(language, one),
    partRow: (rig: Rig, part: PartOutcome) => partRow(language, rig, part),
    band: (demand: number, interval: readonly [number, number]) => loadWithBand(language, demand, interval),
    whatIfRow: (rig: Rig, one: WhatIfOutcome) => whatIfRow(language, rig, one),
    why: (part: Pick<PartOutcome, "rated" | "ratedBasis" | "factors">) => whyRows(language, part),
    blanks: (rig: Rig, outcome: Pick<Outcome, "blanks">) => blankTexts(language, rig, outcome),
    basis: (basis: Basis) => basisText(language, basis),
    taken: (rig: Rig, outcome: Pick<Outcome, "taken">) => takenText(language, rig, outcome),
    notLoaded: ({ notLoaded }: PartOutcome) => (notLoaded ? say(`notLoaded.${notLoaded}`) : undefined),
    cautions: (rig: Rig, facts: readonly CautionFact[]) => cautionTexts(language, rig, facts),
    generalCautions: () => generalCautions(language),
    story: (rig: Rig, run: WhatIfOutcome) => storySentences(language, rig, run),
    fate: (rig: Rig, run: WhatIfOutcome) => fateText(language, rig, run),
    trouble: (rig: Rig, trouble: Trouble | undefined) => troubleText(language, rig, trouble),
    moment: (moments: Moments, falling?: boolean, told?: BreaksTold) => momentLabel(say, moments, falling, told),
    momentText: (moments: Moments, falling?: boolean, told?: BreaksTold) => momentText(say, moments, falling, told),
    placedMoment: (rig: Rig, moment: Moment, gaveWay?: readonly GaveWay[]) =>
      placedMoment(language, rig, moment, gaveWay),
    run: (rig: Rig, recording: Recording, gaveWay?: readonly GaveWay[]) =>
      runSentences(language, rig, recording, gaveWay),
    chance: (value: number) => chance(say, value),
    chanceRange: (value: Probability) => chanceRange(say, value),
  };
}
