export { ageFactor } from "./derating/age.ts";
export { bendFactor } from "./derating/bend.ts";
export { clampFactor } from "./derating/clampTrace.ts";
export { abrasionFactor, cutFactor } from "./derating/damage.ts";
export { BEYOND_SHARE, BEYOND_SPREAD, type StrengthFactor, type Validity } from "./derating/factor.ts";
export { fallsFactor } from "./derating/falls.ts";
export { ropeKnot, webbingKnot } from "./derating/knot.ts";
export {
  combineFactors,
  factorCorrelation,
  type LognormalStrength,
  logCovariance,
  logSpread,
} from "./derating/lognormal.ts";
export { boltPlacement, noRecord, textileMake, usedMetal } from "./derating/make.ts";
export { heatFactor, sheathSlipFactor } from "./derating/rope.ts";
export { sewingFactor, sewnLoopAgeing } from "./derating/sewing.ts";
export { conditionSunMonths, sunFactor } from "./derating/sun.ts";
export { type Hemisphere, type LatitudeClass, monthDose, SUN_DOSE_BASIS } from "./derating/sunDose.ts";
export { wetFactor } from "./derating/wet.ts";
export { type PartStrength, weakestFirst } from "./parts/partStrength.ts";
export { partStrengths } from "./parts/partStrengths.ts";
export {
  type StrengthZone,
  sectionBounds,
  weakestZone,
  wearExtent,
  webbingStrength,
  zoneAt,
} from "./parts/webbingStrength.ts";
export {
  clopperPearson,
  lowerBoundRank,
  shareUpperBound,
  testsForLeast,
  testsForRange,
  testsWithoutFailure,
} from "./statistics/orderStatistics.ts";
export { en1990Factor, natrellaFactor, toleranceFactor, toleranceFactorKnownSpread } from "./statistics/tolerance.ts";
