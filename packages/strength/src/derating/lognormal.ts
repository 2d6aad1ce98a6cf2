/** Lognormal strength: product of lognormal factors about a rated strength. */
import type { StrengthFactor } from "./factor.ts";
import { withTogether } from "./together.ts";

/** 95 % quantile of the standard normal distribution [-]. */
export const Z95 = 1.6448536269514722;

/** Standard deviation of the logarithm for a coefficient of variation [-]. */
export function logSpread(coefficientOfVariation: number): number {
  return Math.sqrt(Math.log1p(coefficientOfVariation * coefficientOfVariation));
}

/**
 * Correlation between the logarithms of two factors. Each takes √shared of its cause's common deviation, and the rest is its
 * own. So two factors of one cause correlate with the geometric mean of their shares [-].
 */
export function factorCorrelation(a: StrengthFactor, b: StrengthFactor): number {
  if (a === b) return 1;
  return a.cause === b.cause ? Math.sqrt(a.shared * b.shared) : 0;
}

/** Covariance of the logarithms of two parts' strengths [-]. */
export function logCovariance(a: readonly StrengthFactor[], b: readonly StrengthFactor[]): number {
  let sum = 0;
  for (const f of a) {
    for (const g of b)
      sum += learntCovariance(f, g) ?? factorCorrelation(f, g) * logSpread(f.spread) * logSpread(g.spread);
  }
  return sum;
}

/** Covariance of two factors that the same own tests know. It may be below 0, because the tests know their product best [-]. */
function learntCovariance(a: StrengthFactor, b: StrengthFactor): number | undefined {
  if (a === b && a.learnt?.adds !== undefined) return a.learnt.adds;
  if (a === b || a.learnt === undefined || a.learnt.source !== b.learnt?.source) return undefined;
  const other = b.learnt.loadings;
  return a.learnt.loadings.reduce((sum, x, i) => sum + x * (other[i] ?? 0), 0);
}

/**
 * The 5 % value of a factor. It decides which of two factors is worse, since a verdict asks for the strength that 95 % of such
 * parts reach [-].
 */
export function lowValue({ value, spread }: Pick<StrengthFactor, "value" | "spread">): number {
  return value * Math.exp(-Z95 * logSpread(spread));
}

export interface LognormalStrength {
  /** Central value (median) [N]. */
  readonly strength: number;
  /** Value that 95 % of such parts reach [N]. */
  readonly strength5: number;
  /** Value that 5 % of such parts exceed [N]. */
  readonly strength95: number;
  /** Standard deviation of the logarithm [-]. */
  readonly sigmaLog: number;
}

/** The factors as a table shows them, with a line that brings their product to the value that own tests know. */
export const shownFactors = (factors: readonly StrengthFactor[]): readonly StrengthFactor[] =>
  withTogether(factors).shown;

/**
 * Combines a rated strength [N] with its factors. Factors that the same own tests know count with their product by those tests.
 */
export function combineFactors(rated: number, given: readonly StrengthFactor[]): LognormalStrength {
  const { factors } = withTogether(given);
  const strength = factors.reduce((product, f) => product * f.value, rated);
  const sigmaLog = Math.sqrt(Math.max(0, logCovariance(factors, factors)));
  return {
    strength,
    strength5: strength * Math.exp(-Z95 * sigmaLog),
    strength95: strength * Math.exp(Z95 * sigmaLog),
    sigmaLog,
  };
}
