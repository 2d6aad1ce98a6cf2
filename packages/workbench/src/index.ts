export {
  type LogRow,
  type LogTable,
  type LogTableFault,
  type LogTableReading,
  readLogTable,
} from "./breakLog/logTable.ts";
export {
  type ColumnMatch,
  type ColumnSource,
  chosenWord,
  columnMatchSchema,
  DATE_ORDERS,
  type DateOrder,
  isMatched,
  KNOWN_WORDS,
  missingIn,
  suggestMatch,
  WORD_COLUMNS,
  type WordColumn,
  withWord,
  wordsIn,
} from "./breakLog/match.ts";
export { readMatched } from "./breakLog/readMatched.ts";
export { logTemplate } from "./breakLog/template.ts";
export {
  type BreakLog,
  type DocumentName,
  type Documents,
  type EarlierWear,
  type KeptWear,
  nameOf,
  type WearWork,
  type WrittenEntry,
  type WrittenPart,
  type WrittenRecord,
  type WrittenRig,
  type WrittenWebbing,
} from "./documents/documents.ts";
export { type Foretold, foretold, USUAL_SPEED } from "./foretold.ts";
export { lowestProfile, type Profile, SHAPES } from "./ground/lowest.ts";
export {
  type LengthUnit,
  type ProfileFault,
  type ProfileReading,
  type ReachDoubt,
  reachDoubt,
  readProfile,
} from "./ground/readProfile.ts";
export {
  adopt,
  closeGroup,
  documentsOf,
  groupStart,
  type History,
  record,
  redo,
  type Step,
  startHistory,
  undo,
} from "./history/history.ts";
export { type InSight, viewOfStep, type WearPage } from "./history/inSight.ts";
export { type Candidate, candidatesOf, documentAt } from "./howFar/candidate.ts";
export { canDisconnect, canLoosen, type SweepNumber, sweepNumbers } from "./howFar/numbers.ts";
export {
  firstAsked,
  foretoldSweep,
  type HowFarAsked,
  type HowFarFault,
  type HowFarPlace,
  type HowFarQuestion,
  type HowFarReading,
  readHowFar,
} from "./howFar/question.ts";
export type { Job, Task, TaskAnswer } from "./job/job.ts";
export { JobSlot } from "./job/jobSlot.ts";
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
export { withAnswer, withDrawnConnections, withDrawnGround, withProfile } from "./newRig/drawn.ts";
export type { Doubt, Fault, FaultKind, Place } from "./newRig/fault.ts";
export { pathsIn } from "./newRig/marks.ts";
export { type PlacesReading, placesText, readPlaces, shareAt } from "./newRig/places.ts";
export { type AnswersReading, readAnswers } from "./newRig/readAnswers.ts";
export { type NewRig, rigFrom } from "./newRig/rigFrom.ts";
export { handStep, reachOfConnection, withConnection } from "./side/connections.ts";
export {
  groundFault,
  MOST_HANDLES,
  reachOf,
  type Steps,
  stretched,
  withoutPoint,
  withPoint,
  withPointAt,
} from "./side/ground.ts";
export { type Point, type Side, type Site, sideOf } from "./side/side.ts";
export { LEG_FIELDS, type LegField, type LegsReading, readLegs } from "./site/legs.ts";
export {
  ANGLE_ERROR,
  LENGTH_ERROR,
  MEASURED_FIELDS,
  MEASURED_WAYS,
  type MeasuredField,
  type MeasuredReading,
  type MeasuredTexts,
  type MeasuredWay,
  readMeasured,
  SIDES,
} from "./site/measured.ts";
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
