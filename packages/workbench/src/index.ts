export { lowestProfile, type Profile, SHAPES } from "./ground/lowest.ts";
export {
  ANSWER_IDS,
  ANSWERS,
  type Answer,
  type AnswerId,
  type Answers,
  answerOf,
  answersSchema,
  isAsked,
  QUESTIONS,
  type QuestionId,
} from "./newRig/answers.ts";
export type { Doubt, Fault, FaultKind, Place } from "./newRig/fault.ts";
export { MOST_PLACES, type PlacesReading, readPlaces, shareAt } from "./newRig/places.ts";
export { type AnswersReading, readAnswers } from "./newRig/readAnswers.ts";
export { type NewRig, questionOf, rigFrom } from "./newRig/rigFrom.ts";
