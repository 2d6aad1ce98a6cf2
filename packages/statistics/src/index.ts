export { andersonDarling, batchesPoolable, type GoodnessOfFit, type Poolability } from "./andersonDarling.ts";
export { lognormalLowerBound, normalLowerBound } from "./bounds.ts";
export { choleskyRoot } from "./cholesky.ts";
export { cdf, type Distribution, distributionMean, quantile } from "./distribution.ts";
export { FAMILY_NAMES, type FamilyName, familyQuantile, type LocationScale } from "./family.ts";
export { type Fit, type FitFailure, fitFamily, fittedQuantile, waldInterval, weibullParameters } from "./fit.ts";
export { logGamma } from "./gamma.ts";
export { failureProbability, leastShares } from "./interference.ts";
export { latinHypercube } from "./latinHypercube.ts";
export { normalCdf, normalDensity, normalQuantile } from "./normal.ts";
export {
  lowerPrediction,
  type NormalInverseGamma,
  type Prediction,
  predict,
  type RegressionPoint,
  updateRegression,
  VAGUE_PRIOR,
} from "./normalInverseGamma.ts";
export { normalTail } from "./normalTail.ts";
export {
  exactly,
  exactValues,
  isComplete,
  mean,
  type Observation,
  observationPlace,
  standardDeviation,
} from "./observation.ts";
export {
  clopperPearson,
  lowerBoundRank,
  shareUpperBound,
  testsForLeast,
  testsForRange,
  testsWithoutFailure,
} from "./orderStatistics.ts";
export { criticalResidual, maximumNormedResidual, type OutlierTest } from "./outliers.ts";
export { plottingPositions } from "./plottingPositions.ts";
export { type ProfiledQuantity, profileInterval, profileLowerBound } from "./profile.ts";
export { type QuantileBelief, quantileBelief } from "./quantileBelief.ts";
export { type Random, seededRandom } from "./random.ts";
export { tQuantile } from "./studentT.ts";
export { choleskyFactor, choleskyInverse, choleskySolve } from "./symmetricSolve.ts";
export {
  type Coefficient,
  type RegressionRow,
  regressionCovariance,
  regressionGain,
  regressionSolver,
} from "./tiedRegression.ts";
export { en1990Factor, natrellaFactor, toleranceFactor, toleranceFactorKnownSpread } from "./tolerance.ts";
export { type LoadCase, type NormalMargins, type UnionChance, unionChance } from "./unionChance.ts";
