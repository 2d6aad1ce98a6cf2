export type { Accuracy, Recording } from "@secondline/engine";
export type { Basis, PartId, Rig } from "@secondline/rig";
export type { BreakTest } from "@secondline/strength";
export type { Taken } from "./assessment/assessment.ts";
export {
  type Assessed,
  type Assessment,
  assess,
  type PartJudgement,
  rigOnLaterDays,
  speaksOf,
} from "./assessment/assessment.ts";
export type { AssessmentFact, AssessmentFacts, AssessmentIssue } from "./assessment/assessmentFacts.ts";
export type { AssessmentNotes } from "./assessment/assessmentNotes.ts";
export { assessRig } from "./assessment/assessRig.ts";
export { inputHash } from "./assessment/inputHash.ts";
export { cardTerms } from "./card/cardTerms.ts";
export { type FallsQuestion, fallsLeft, MOST_FALLS_LEFT, withFalls } from "./card/fallsLeft.ts";
export {
  type HeaviestFound,
  type HeaviestWalker,
  heaviestWalker,
  keptUpTo,
  type WalkerAnswer,
  type WalkerQuestion,
  type WalkerStep,
} from "./card/heaviestWalker.ts";
export {
  type CardFalls,
  type CardQuestion,
  type CardTerms,
  type CardUntil,
  cardUntil,
  type Refusal,
  type SiteCard,
  siteCard,
} from "./card/siteCard.ts";
export { type Comparison, type ComparisonRow, compareLayouts } from "./compare/compareLayouts.ts";
export {
  type FrontierLayout,
  type FrontierPoint,
  type FrontierQuantity,
  type FrontierStanding,
  frontier,
} from "./compare/frontier.ts";
export { type Erratum, errataOf, KNOWN_ERRATA, readErrata } from "./errata/errata.ts";
export { EVENT_CLASSES, type EventBase, type EventClass, type EventKind } from "./events/eventKind.ts";
export {
  addEventKind,
  asItsKeySays,
  classOf,
  eventBefore,
  missingIn,
  parseWhatIf,
  titleOf,
  type WhatIf,
  whatIfKey,
  whatIfSet,
} from "./events/registry.ts";
export type { Rescue } from "./events/rescue.ts";
export type { Phrase, PhraseValue } from "./facts/phrase.ts";
export type * from "./facts/runFacts.ts";
export type { Trace, TraceBand, TraceLine } from "./facts/trace.ts";
export { type Among, compareMeasured, type MeasuredComparison } from "./measured/compareMeasured.ts";
export { type ModelSignals, type ModelSignalsOptions, modelSignals } from "./measured/modelSignals.ts";
export { readRecording } from "./measured/readRecording.ts";
export { CHANNELS, type Channel, type MeasuredFall, type RecordingNote } from "./measured/recording.ts";
export { RECORDING_FORMAT } from "./measured/recordingHead.ts";
export { byDanger, type LeastMargin, type RankedWhatIf, weakestIn } from "./outcome/byDanger.ts";
export { type LoadStrip, partStrip, pullStrip } from "./outcome/loadStrips.ts";
export type * from "./outcome/outcome.ts";
export type { StudyProgress } from "./outcome/studyProgress.ts";
export { worstWhatIf } from "./outcome/worstWhatIf.ts";
export {
  casesOf,
  MOST_CASES,
  type PlannedRig,
  type PlanRun,
  type PlanRuns,
  planned,
  resultLine,
} from "./plan/planRuns.ts";
export { readPlan, type StudyPlan } from "./plan/readPlan.ts";
export {
  ChancesImpossible,
  type ChancesOptions,
  chances,
  DEFAULT_DRAWS,
  FEWEST_RUNS,
  MOST_RUNS,
  noChances,
} from "./reliability/chances.ts";
export type * from "./reliability/chancesOutcome.ts";
export { LIKELY_FIRST_BASIS } from "./reliability/likelyFirst.ts";
export type { AnchorFacts, CautionFact, JudgedFactor, Slips } from "./rule/cautionFacts.ts";
export { anchorFacts, judgedFactors } from "./rule/cautionFacts.ts";
export type { SearchGap } from "./rule/complete.ts";
export type { EventRuns } from "./rule/demand.ts";
export { groundEvent } from "./rule/fall.ts";
export { type PersonMargin, PULL_LIMITS } from "./rule/person.ts";
export { type Outlook, type OutlookQuestion, type PartDate, takeDownDates } from "./rule/takeDownDates.ts";
export type { Reason, Verdict } from "./rule/verdict.ts";
export { executeRun } from "./run/executeRun.ts";
export type * from "./run/runOrder.ts";
export { runWork } from "./run/runWork.ts";
export { type RunOptions, runWhatIf, showWhatIf } from "./run/showRun.ts";
export type * from "./run/whatIfOutcome.ts";
export { type Draw, drawn, NO_DRAW } from "./scatter/draw.ts";
export {
  INPUT_IDS,
  type InputId,
  MOST_SPREAD,
  placeRange,
  type Spreads,
  type UncertainInput,
  uncertainInputs,
} from "./scatter/inputs.ts";
export { Sampler, SEED } from "./scatter/sampler.ts";
export { NothingComputed, StaticsUnsolved } from "./search/conclude.ts";
export { DEFAULT_RUNS } from "./search/defaultRuns.ts";
export { type Round, type SearchOptions, type SearchResult, search } from "./search/search.ts";
export { study } from "./search/study.ts";
export type { SingleFailure } from "./singles/singleFailures.ts";
export { type RigStrengths, rigStrengths } from "./strengths/rigStrengths.ts";
export {
  isApart,
  KNOB_FAULTS,
  type Knob,
  type KnobFault,
  knobText,
  readKnob,
  withValue,
} from "./sweep/knob.ts";
export { NothingSwept, type SweepOptions, type SweepRound, type SweepSize, sweep, sweepRuns } from "./sweep/sweep.ts";
export type * from "./sweep/sweepOutcome.ts";
export {
  allSweptRigs,
  type BadPoint,
  type KnownBesides,
  type PointsQuestion,
  type SweepPoint,
  type SweepPoints,
  type SweptRig,
  sweepPoint,
  sweepPoints,
  sweptRigs,
} from "./sweep/sweepPoints.ts";
export { isTurned } from "./sweep/tracks.ts";
export { GENERATION, VERSION } from "./version.ts";
