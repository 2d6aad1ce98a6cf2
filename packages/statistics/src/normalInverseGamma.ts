/**
 * Bayesian linear regression y = β₀ + β₁·x + ε with the conjugate normal–inverse-gamma prior: β given σ² is normal with
 * covariance σ²·Λ⁻¹, σ² is inverse-gamma (a, b). Bernardo & Smith, *Bayesian Theory*, 1994, section 5.2; Gelman et al.,
 * *Bayesian Data Analysis*, ch. 14.
 */
import { tQuantile } from "./studentT.ts";

/** Symmetric 2 × 2 matrix: [11, 12, 22]. */
type Symmetric = readonly [number, number, number];

/** Belief about line and scatter: β given σ² is normal about `mean` with covariance σ²·Λ⁻¹, σ² is inverse-gamma (a, b). */
export interface NormalInverseGamma {
  /** Centre of β [-]. */
  readonly mean: readonly [number, number];
  /** Λ [-]. */
  readonly precision: Symmetric;
  readonly a: number;
  readonly b: number;
}

/** One observed point, in the units of the line. */
export interface RegressionPoint {
  readonly x: number;
  readonly y: number;
}

/** Prior without knowledge: the posterior is then ordinary least squares, and needs three points or more. */
export const VAGUE_PRIOR: NormalInverseGamma = { mean: [0, 0], precision: [0, 0, 0], a: -1, b: 0 };

/** The prior and the points together. */
export function updateRegression(prior: NormalInverseGamma, points: readonly RegressionPoint[]): NormalInverseGamma {
  const [p11, p12, p22] = prior.precision;
  const sum = (f: (p: RegressionPoint) => number) => points.reduce((total, p) => total + f(p), 0);
  const precision: Symmetric = [p11 + points.length, p12 + sum((p) => p.x), p22 + sum((p) => p.x * p.x)];
  const [m0, m1] = prior.mean;
  const right = [p11 * m0 + p12 * m1 + sum((p) => p.y), p12 * m0 + p22 * m1 + sum((p) => p.x * p.y)] as const;
  const [i11, i12, i22] = inverse(precision);
  const mean = [i11 * right[0] + i12 * right[1], i12 * right[0] + i22 * right[1]] as const;
  // Residuals and the pull on the prior, summed as squares: no cancellation of large numbers.
  const residuals = sum((p) => (p.y - mean[0] - mean[1] * p.x) ** 2);
  const [d0, d1] = [mean[0] - m0, mean[1] - m1];
  const pull = p11 * d0 * d0 + 2 * p12 * d0 * d1 + p22 * d1 * d1;
  return { mean, precision, a: prior.a + points.length / 2, b: prior.b + 0.5 * (residuals + pull) };
}

/** Prediction of one further value at a point. */
export interface Prediction {
  /** Centre [-]. */
  readonly centre: number;
  /** Scale of the t distribution of one further value [-]. */
  readonly scale: number;
  readonly freedom: number;
}

/** Distribution of one further value at x; undefined while nothing is known of the scatter. */
export function predict(state: NormalInverseGamma, x: number): Prediction | undefined {
  const [p11, p12, p22] = state.precision;
  if (state.a <= 0 || p11 * p22 - p12 * p12 <= 0) return undefined;
  const [i11, i12, i22] = inverse(state.precision);
  const leverage = i11 + 2 * i12 * x + i22 * x * x;
  return {
    centre: state.mean[0] + state.mean[1] * x,
    scale: Math.sqrt((state.b / state.a) * (1 + leverage)),
    freedom: 2 * state.a,
  };
}

/** Value that one further result exceeds with the confidence [-]. */
export function lowerPrediction({ centre, scale, freedom }: Prediction, confidence: number): number {
  return centre - tQuantile(confidence, freedom) * scale;
}

function inverse([a, b, c]: Symmetric): Symmetric {
  const determinant = a * c - b * b;
  return [c / determinant, -b / determinant, a / determinant];
}
