export { lowestProfile, type Profile, SHAPES } from "./ground/lowest.ts";
export { type LengthUnit, type ProfileFault, type ProfileReading, readProfile } from "./ground/readProfile.ts";
export {
  ANSWER_IDS,
  ANSWERS,
  type Answer,
  type AnswerId,
  type Answers,
  answerOf,
  isAsked,
  QUESTIONS,
  type QuestionId,
} from "./newRig/answers.ts";
export type { Doubt, Fault, FaultKind, Place } from "./newRig/fault.ts";
export { pathsIn } from "./newRig/marks.ts";
export { type PlacesReading, readPlaces, shareAt } from "./newRig/places.ts";
export { type AnswersReading, readAnswers } from "./newRig/readAnswers.ts";
export { type NewRig, rigFrom } from "./newRig/rigFrom.ts";
export {
  EMPTY_STOCK,
  type EntryField,
  loadRows,
  type StockDocument,
  type StockDoubt,
  type StockEntry,
  type StockFault,
  type StockReading,
  stockFrom,
} from "./stock/ownStock.ts";
export { type PullFault, type PullReading, readPull } from "./stock/readPull.ts";
export { MOST_TEXT } from "./tables/readTable.ts";
