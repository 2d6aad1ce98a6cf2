export { columnName } from "./breakLog/layout.ts";
export {
  type BreakTest,
  LOG_COLUMNS,
  type LogColumn,
  type LogFault,
  OUTCOMES,
  REQUIRED_COLUMNS,
} from "./breakLog/logEntry.ts";
export type { LogFact, LogFacts } from "./breakLog/logFacts.ts";
export { readTest, type WrittenTest } from "./breakLog/readEntry.ts";
export { type BreakLogReading, readBreakLog } from "./breakLog/readLog.ts";
export { groupKey } from "./breakLog/testGroup.ts";
export { type TestsUntil, testsUntil } from "./breakLog/untilDay.ts";
export { testFields, writeBreakLog } from "./breakLog/writeLog.ts";
export { addDays, type PlainDate, readDate } from "./dates/calendarDate.ts";
export { ageFactor } from "./derating/age.ts";
export { bendFactor } from "./derating/bend.ts";
export { clampFactor } from "./derating/clampMark.ts";
export { CONSTANTS, type ConstantStatus } from "./derating/constants.ts";
export { fallsFactor } from "./derating/falls.ts";
export { ropeKnot, webbingKnot } from "./derating/knot.ts";
export { combineFactors, logSpread, Z95 } from "./derating/lognormal.ts";
export { usedMetal } from "./derating/make.ts";
export { OWN_NAME } from "./derating/own.ts";
export { sewingFactor } from "./derating/sewing.ts";
export { sunFactor } from "./derating/sun.ts";
export { monthDose } from "./derating/sunDose.ts";
export { wetFactor } from "./derating/wet.ts";
export { analyseBreakLog, type BreakLogReport } from "./logReport/analyse.ts";
export { characteristicValue } from "./logReport/characteristic.ts";
export type { DoubtFacts } from "./logReport/doubtFacts.ts";
export type { GroupReport } from "./logReport/groupReport.ts";
export type { Narrowing } from "./logReport/narrowing.ts";
export { type NoteFact, type NoteFacts, noteFact } from "./noteFacts.ts";
export { type PartStrength, weakestFirst } from "./parts/partStrength.ts";
export { partStrengths } from "./parts/partStrengths.ts";
export { type StrengthZone, webbingStrength, zoneAt } from "./parts/webbingStrength.ts";
export type { LoadDraws } from "./reliability/loadPosterior.ts";
export { countedShare, type FailureChances, failureChances, type VarianceSource } from "./reliability/partChances.ts";
export { type ReliabilityPart, reliabilityPart } from "./reliability/reliabilityPart.ts";
export { type StateResiduals, type StockResiduals, stockResiduals, type TestResidual } from "./retention/residuals.ts";
export type { Retention, RetentionValue } from "./retention/retention.ts";
export type { StockComparison } from "./retention/stockComparison.ts";
export { stockRetention } from "./retention/stockRetention.ts";
export type { BestTest } from "./retention/strongestSample.ts";
export { factorsFromLog } from "./retention/testedStock.ts";
export { countingTests, testUseWords } from "./retention/testUse.ts";
export { futureFromRecord, futureFromRig } from "./takeDown/future.ts";
export {
  type Contradiction,
  DEFAULT_LOAD_SHARE,
  type LearntFactor,
  type LearntPart,
  type TeardownLearnt,
  teardownLearnt,
} from "./teardown/learnt.ts";
export { pieceRow, readResults, teardownLog } from "./teardown/planLog.ts";
export type { NotToBeHad, OtherWear, Sample } from "./teardown/sample.ts";
export {
  DEFAULT_PULLS,
  nothingHangs,
  type Piece,
  planTeardown,
  type Teardown,
  type TeardownBand,
  type TeardownIssue,
  type TeardownReading,
  type TeardownWebbing,
} from "./teardown/teardown.ts";
export { applyWear } from "./wear/applyWear.ts";
export { ENTRY_KINDS } from "./wear/entries/entryKinds.ts";
export type { RecordIssue } from "./wear/faults.ts";
export type { WearFlag } from "./wear/flags.ts";
export { latitudeNotes } from "./wear/inOnePlace.ts";
export { nextInspection } from "./wear/lapse.ts";
export { misplacedIssues } from "./wear/misplaced.ts";
export { needFacts } from "./wear/needWords.ts";
export { PART_ENTRY_KINDS } from "./wear/partEntries/partEntryKinds.ts";
export type { PartState } from "./wear/partState.ts";
export { readWearRecord } from "./wear/readRecord.ts";
export type { WearRecord } from "./wear/record.ts";
export type { RecordFact, RecordFacts } from "./wear/recordFacts.ts";
export { rigMatch } from "./wear/rigReference.ts";
export type { WearDocument } from "./wear/schema.ts";
export { strengthAlong } from "./wear/strengthAlong.ts";
export { type Lapse, type Upkeep, upkeepOf } from "./wear/upkeep.ts";
export { type WearState, wearState } from "./wear/wearState.ts";
export type { WearMark, WebbingState } from "./wear/webbingState.ts";
