export type { Accuracy, Recording } from "@secondline/engine";
export type { Basis, Rig } from "@secondline/rig";
export type { BreakTest } from "@secondline/strength";
export { CAUTIONS, INVENTED } from "./cautions.ts";
export { type Comparison, type ComparisonRow, compareLayouts } from "./compareLayouts.ts";
export { governingWhatIf } from "./governing.ts";
export { inputHash } from "./inputHash.ts";
export { judgedParts, judgementCautions } from "./judgementCautions.ts";
export { LIKELY_FIRST_BASIS } from "./likelyFirst.ts";
export type * from "./outcome.ts";
export { QUICK_ALLOWANCE } from "./quickLook.ts";
export {
  type ChancesOptions,
  chances,
  FEWEST_RUNS,
  MOST_RUNS,
  noChances,
} from "./reliability/chances.ts";
export type * from "./reliability/chancesOutcome.ts";
export {
  chanceText,
  formatChance,
  IN_BRACKETS,
  inputText,
  ownCautions,
  partName,
  restText,
  SHARE_KINDS,
  shareText,
  worthARow,
} from "./reliability/chanceWords.ts";
export {
  INPUT_IDS,
  type InputId,
  MOST_SPREAD,
  type Spreads,
  uncertainInputs,
} from "./reliability/uncertainInputs.ts";
export { report } from "./report/report.ts";
export { cameOfIt } from "./report/whatIfSection.ts";
export { rigStrengths } from "./rigStrengths.ts";
export { type RunOptions, runWhatIf, type StudyProgress } from "./runWhatIf.ts";
export { type StudyOptions, study } from "./study.ts";
export { VERSION } from "./version.ts";
export { parseWhatIf, whatIfKey } from "./whatIf.ts";
export { whatIfSet } from "./whatIfSet.ts";
