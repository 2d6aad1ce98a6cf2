export { type AnalysisOptions, analyseBreakLog, type BreakLogReport } from "./breakLog/analyse.ts";
export {
  type BreakTest,
  KNOTS,
  LOG_COLUMNS,
  type LogColumn,
  type LogFault,
  OUTCOMES,
  REQUIRED_COLUMNS,
} from "./breakLog/breakTest.ts";
export {
  ASSUMED_SPREAD,
  type Characteristic,
  type CharacteristicOptions,
  characteristicValue,
  characteristicValues,
} from "./breakLog/characteristic.ts";
export type { Doubt } from "./breakLog/doubts.ts";
export type { FamilyReport } from "./breakLog/groupFindings.ts";
export { type GroupReport, groupReport } from "./breakLog/groupReport.ts";
export { type Narrowing, narrowing } from "./breakLog/narrowing.ts";
export { type BreakLogReading, readBreakLog } from "./breakLog/readLog.ts";
export { readTest, type TestFields, type TestReading } from "./breakLog/readTest.ts";
export { type TestsUntil, testsUntil } from "./breakLog/untilDay.ts";
export { testFields, writeBreakLog } from "./breakLog/writeLog.ts";
export { addDays, type PlainDate, readDate } from "./dates/calendarDate.ts";
export { ageFactor } from "./derating/age.ts";
export { bendFactor } from "./derating/bend.ts";
export { boltDirectionFactors, worstLegAngle } from "./derating/boltDirection.ts";
export { clampFactor } from "./derating/clampMark.ts";
export {
  CONSTANTS,
  type Constant,
  type ConstantStatus,
  constantsMarkdown,
} from "./derating/constants.ts";
export { type ConstantKey, constant } from "./derating/constantValues.ts";
export { abrasionFactor, cutFactor } from "./derating/damage.ts";
export { BEYOND_SHARE, BEYOND_SPREAD, type Blank, type StrengthFactor, type Validity } from "./derating/factor.ts";
export { fallsFactor } from "./derating/falls.ts";
export { knotIn, ropeKnot, webbingKnot } from "./derating/knot.ts";
export {
  combineFactors,
  factorCorrelation,
  type LognormalStrength,
  logCovariance,
  logSpread,
} from "./derating/lognormal.ts";
export { boltPlacement, noRecord, textileMake, usedMetal } from "./derating/make.ts";
export { OWN_NAME, ownFactors } from "./derating/own.ts";
export { riggedFactors } from "./derating/rigged.ts";
export { heatFactor, sheathSlipFactor } from "./derating/rope.ts";
export { sewingFactor, sewnLoopAgeing } from "./derating/sewing.ts";
export { conditionSunMonths, sunFactor } from "./derating/sun.ts";
export { type Hemisphere, type LatitudeClass, monthDose, SUN_DOSE_BASIS } from "./derating/sunDose.ts";
export { wetFactor } from "./derating/wet.ts";
export { type BlankCost, type PartStrength, weakestFirst } from "./parts/partStrength.ts";
export { partStrengths } from "./parts/partStrengths.ts";
export {
  type StrengthZone,
  sectionBounds,
  weakestZone,
  webbingStrength,
  zoneAt,
} from "./parts/webbingStrength.ts";
export { wearExtent } from "./parts/webbingWear/wearKinds.ts";
export { cdf, type Distribution, density, distributionMean, quantile } from "./reliability/distribution.ts";
export { failureProbability, leastShares } from "./reliability/interference.ts";
export { latinHypercube } from "./reliability/latinHypercube.ts";
export type { LoadDraws } from "./reliability/loadPosterior.ts";
export {
  countedShare,
  type FailureChances,
  failureChances,
  type PartChances,
  type Share,
  type VarianceShare,
  type VarianceSource,
} from "./reliability/partChances.ts";
export { type Random, seededRandom } from "./reliability/random.ts";
export { type ReliabilityPart, reliabilityPart } from "./reliability/reliabilityPart.ts";
export { type LoadCase, type NormalMargins, type UnionChance, unionChance } from "./reliability/unionChance.ts";
export { futureFromRecord, futureFromRig, olderRig } from "./retention/future.ts";
export { modelAgainstTests, type StateComparison, type StockComparison } from "./retention/modelAgainstTest.ts";
export {
  lowerPrediction,
  type NormalInverseGamma,
  predict,
  updateRegression,
  VAGUE,
} from "./retention/normalInverseGamma.ts";
export { type StateResiduals, type StockResiduals, stockResiduals, type TestResidual } from "./retention/residuals.ts";
export type { Retention, RetentionTest, RetentionValue } from "./retention/retention.ts";
export { type StockModel, stockModel } from "./retention/stockModel.ts";
export { type StockRetention, stockRetention } from "./retention/stockRetention.ts";
export { type PartTakeDown, type TakeDown, type TakeDownQuestion, takeDown } from "./retention/takeDown.ts";
export {
  builtInFactors,
  type FactorsOf,
  factorsFromLog,
  type StockFactors,
  testedFactors,
} from "./retention/testedStock.ts";
export type { NotUsed } from "./retention/testState.ts";
export { type TestUse, testUseWords, useOfTest } from "./retention/testUse.ts";
export type { WearDose, WearId } from "./retention/wearFactors.ts";
export {
  andersonDarling,
  batchesPoolable,
  type GoodnessOfFit,
  type Poolability,
} from "./statistics/andersonDarling.ts";
export { lognormalLowerBound, normalLowerBound } from "./statistics/bounds.ts";
export { FAMILY_NAMES, type FamilyName, familyCdf, familyQuantile, type Shape } from "./statistics/family.ts";
export {
  type Fit,
  type FitFailure,
  fitFamily,
  fittedQuantile,
  waldInterval,
  weibullParameters,
} from "./statistics/fit.ts";
export { normalQuantile } from "./statistics/normal.ts";
export {
  exactly,
  exactValues,
  isComplete,
  mean,
  type Observation,
  standardDeviation,
} from "./statistics/observation.ts";
export {
  clopperPearson,
  lowerBoundRank,
  shareUpperBound,
  testsForLeast,
  testsForRange,
  testsWithoutFailure,
} from "./statistics/orderStatistics.ts";
export { criticalResidual, maximumNormedResidual, type OutlierTest } from "./statistics/outliers.ts";
export { plottingPositions } from "./statistics/plottingPositions.ts";
export { type ProfiledQuantity, profileInterval, profileLowerBound } from "./statistics/profile.ts";
export { type QuantileBelief, quantileBelief } from "./statistics/quantileBelief.ts";
export { choleskyFactor, choleskyInverse, choleskySolve } from "./statistics/symmetricSolve.ts";
export { en1990Factor, natrellaFactor, toleranceFactor, toleranceFactorKnownSpread } from "./statistics/tolerance.ts";
export {
  type Contradiction,
  DEFAULT_SHARE,
  type FactorValue,
  type LearntFactor,
  type LearntPart,
  type LearntQuestion,
  type TeardownLearnt,
  teardownLearnt,
} from "./teardown/learnt.ts";
export { pieceRow, type ResultsReading, readResults, teardownLog } from "./teardown/planLog.ts";
export type { Cut, NotToBeHad, OtherWear, Sample, SampleKind } from "./teardown/sample.ts";
export {
  DEFAULT_PULLS,
  nothingHangs,
  type Piece,
  planTeardown,
  type Teardown,
  type TeardownBand,
  type TeardownIssue,
  type TeardownQuestion,
  type TeardownReading,
  type TeardownWebbing,
} from "./teardown/teardown.ts";
export { applyWear, type WornRig, wearToRig } from "./wear/applyWear.ts";
export { ENTRY_KINDS, type WebbingEntry } from "./wear/entries/entryKinds.ts";
export type { WearFlag } from "./wear/flags.ts";
export type { Judgement } from "./wear/judgement.ts";
export {
  ASK_FOR_INSPECTION,
  type BetweenInspections,
  type DatedEntry,
  fallsSinceInspection,
  type LapseCause,
  lapseCauses,
  nextInspection,
} from "./wear/lapse.ts";
export { needSentences } from "./wear/needWords.ts";
export type { Doubt as WearDoubt, OpenNeed } from "./wear/openNeed.ts";
export { PART_ENTRY_KINDS, type PartEntry } from "./wear/partEntries/partEntryKinds.ts";
export type { PartState } from "./wear/partState.ts";
export type { Placement } from "./wear/placement.ts";
export type { LineReading } from "./wear/readings/lineReading.ts";
export { type Standing, standing } from "./wear/readings/lineStatics.ts";
export { type ReadingComparison, readingAgainstRig, rigAsRead } from "./wear/readings/readingAgainstRig.ts";
export { type TensionDrift, tensionDrift } from "./wear/readings/tensionDrift.ts";
export { MAX_WEAR_TEXT, readWearRecord, type WearReading } from "./wear/readRecord.ts";
export type { PartRecord, UsePlan, WearRecord, WebbingRecord } from "./wear/record.ts";
export { type RigMatch, rigMatch } from "./wear/rigReference.ts";
export { WEAR_FORMAT, type WearDocument, wearSchema } from "./wear/schema.ts";
export { strengthAlong } from "./wear/strengthAlong.ts";
export { type Lapse, type Upkeep, upkeepOf } from "./wear/upkeep.ts";
export { type WearState, wearState } from "./wear/wearState.ts";
export { WEBLOCK_MARK, type WearMark, type WebbingState } from "./wear/webbingState.ts";
