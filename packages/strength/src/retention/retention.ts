/**
 * Strength against months in the sun or number of falls: what published data says, what the tests say alone, and both
 * together. The logarithm of strength is regressed on the logarithm of the share that the published curve leaves, so
 * that slope 1 is the published curve itself and conjugate updating stays exact.
 */
import type { Basis, Fibre } from "@secondline/rig";
import { fallsFactor } from "../derating/falls.ts";
import { sunFactor } from "../derating/sun.ts";
import {
  lowerPrediction,
  type NormalInverseGamma,
  predict,
  type RegressionPoint,
  updateRegression,
  VAGUE,
} from "./normalInverseGamma.ts";

/** What strength is followed over. */
export type RetentionCause = { readonly kind: "sun"; readonly fibre: Fibre } | { readonly kind: "falls" };

export interface RetentionTest {
  /** Months of full sun, or falls [-]. */
  readonly dose: number;
  /** Breaking load [N]. */
  readonly strength: number;
}

/** Strength at a dose, as one of the three sees it. */
export interface RetentionValue {
  /** Central value [N]. */
  readonly central: number;
  /** Value that one further part exceeds with the confidence [N]. */
  readonly lower: number;
}

export interface Retention {
  readonly cause: RetentionCause;
  readonly unit: "months of full sun" | "falls";
  /** Largest dose that the published curve covers; nothing is said beyond it [-]. */
  readonly validTo: number;
  readonly basis: Basis;
  /** Least number of tests that stand on their own: with fewer, `tests` is undefined everywhere. */
  readonly testCount: number;
  readonly prior: (dose: number, confidence: number) => RetentionValue;
  readonly tests: (dose: number, confidence: number) => RetentionValue | undefined;
  readonly posterior: (dose: number, confidence: number) => RetentionValue;
  /** How much of the published loss the tests bear out: 1 as published, 2 twice the loss on the log [-]. */
  readonly slope: { readonly prior: number; readonly posterior: number };
}

/** Scatter of single results about the curve, as standard deviation of the logarithm, and how well it is known. */
const SCATTER = 0.1;
const SCATTER_WEIGHT = 4;
/** Standard deviation of the new strength about the rated one, on the logarithm [-]. */
const NEW_SPREAD = 0.05;
/** Standard deviation of the slope: gives the curve about the scatter that derating gives it [-]. */
const SLOPE_SPREAD = 0.5;

/**
 * Retention of parts rated at `rated` newtons. Doses beyond the published range throw: a caller asks within `validTo`.
 * Tests without spread in dose say nothing on their own, and still move the posterior.
 */
export function retention(cause: RetentionCause, rated: number, tests: readonly RetentionTest[]): Retention {
  const edge = published(cause, 0).validity!.to;
  for (const { dose } of tests) requireDose(dose, edge);
  const x = (dose: number) => Math.log(published(cause, requireDose(dose, edge)).value);
  const points: RegressionPoint[] = tests.map((t) => ({ x: x(t.dose), y: Math.log(t.strength) }));
  const prior = priorOf(rated);
  const posterior = updateRegression(prior, points);
  const alone = updateRegression(VAGUE, points);
  const at = (state: NormalInverseGamma, dose: number, confidence: number): RetentionValue | undefined => {
    const prediction = predict(state, x(dose));
    if (prediction === undefined) return undefined;
    return { central: Math.exp(prediction.centre), lower: Math.exp(lowerPrediction(prediction, confidence)) };
  };
  return {
    cause,
    unit: cause.kind === "sun" ? "months of full sun" : "falls",
    validTo: edge,
    basis: published(cause, 0).basis,
    testCount: tests.length,
    prior: (dose, confidence) => at(prior, dose, confidence)!,
    tests: (dose, confidence) => (points.length > 2 ? at(alone, dose, confidence) : undefined),
    posterior: (dose, confidence) => at(posterior, dose, confidence)!,
    slope: { prior: prior.mean[1], posterior: posterior.mean[1] },
  };
}

function published(cause: RetentionCause, dose: number) {
  return cause.kind === "sun" ? sunFactor(cause.fibre, dose) : fallsFactor(dose, "webbing");
}

function priorOf(rated: number): NormalInverseGamma {
  const variance = SCATTER * SCATTER;
  return {
    mean: [Math.log(rated), 1],
    precision: [variance / (NEW_SPREAD * NEW_SPREAD), 0, variance / (SLOPE_SPREAD * SLOPE_SPREAD)],
    a: SCATTER_WEIGHT / 2,
    b: (SCATTER_WEIGHT / 2) * variance,
  };
}

function requireDose(dose: number, edge: number): number {
  if (dose >= 0 && dose <= edge) return dose;
  throw new RangeError(`a dose of ${dose} is outside 0 to ${edge}, which the published curve covers`);
}
