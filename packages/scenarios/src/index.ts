export type { Accuracy, Recording } from "@secondline/engine";
export type { Basis, Rig } from "@secondline/rig";
export type { BreakTest } from "@secondline/strength";
export { CAUTIONS, INVENTED } from "./cautions.ts";
export { type Comparison, type ComparisonRow, compareLayouts } from "./compareLayouts.ts";
export { inputHash } from "./inputHash.ts";
export type * from "./outcome.ts";
export {
  type ChancesOptions,
  chances,
  DEFAULT_RUNS,
  DEFAULT_SEED,
  FEWEST_RUNS,
  MOST_RUNS,
  noChances,
  TooFewRuns,
} from "./reliability/chances.ts";
export type * from "./reliability/chancesOutcome.ts";
export { anyText, atMost, chanceText, formatChance, inputText } from "./reliability/chanceWords.ts";
export {
  INPUT_IDS,
  type InputId,
  MOST_SPREAD,
  type Spreads,
  type UncertainInput,
  uncertainInputs,
} from "./reliability/uncertainInputs.ts";
export { type ReportOptions, report } from "./report/report.ts";
export { cameOfIt } from "./report/whatIfSection.ts";
export { type RigStrengths, rigStrengths } from "./rigStrengths.ts";
export { type RunOptions, runWhatIf, type StudyProgress } from "./runWhatIf.ts";
export { NoEquilibrium, NothingComputed, type StudyOptions, study } from "./study.ts";
export { defaultDuration, type ProblemOptions, toProblem } from "./toProblem.ts";
export { VERSION } from "./version.ts";
export { parseWhatIf, place, whatIfKey, whatIfTitle } from "./whatIf.ts";
export { nearEnd, type WhatIfSetOptions, whatIfSet } from "./whatIfSet.ts";
