/**
 * Strength of a stock against months in the sun or number of falls, to be drawn: as built in, as the tests say alone, and
 * both together.
 */
import type { Basis, Fibre, LineStock } from "@secondline/rig";
import { combineFactors } from "../derating/lognormal.ts";
import { normalQuantile } from "../statistics/normal.ts";
import { lowerPrediction, predict, type RegressionPoint, updateRegression, VAGUE } from "./normalInverseGamma.ts";
import type { StockModel } from "./stockModel.ts";
import { builtInFactors, type StockFactors, testedFactors } from "./testedStock.ts";
import { builtInFactor, lastDose } from "./wearFactors.ts";

/** What strength is followed over. */
export type RetentionCause = { readonly kind: "sun"; readonly fibre: Fibre } | { readonly kind: "falls" };

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
  /** Largest dose that the built-in curve covers; nothing is said beyond it [-]. */
  readonly validTo: number;
  readonly basis: Basis;
  /** Tests of new pieces and of pieces with this cause alone. */
  readonly testCount: number;
  readonly prior: (dose: number, confidence: number) => RetentionValue;
  /** Undefined everywhere with fewer than three breaking loads. */
  readonly tests: (dose: number, confidence: number) => RetentionValue | undefined;
  readonly posterior: (dose: number, confidence: number) => RetentionValue;
  /** How much of the built-in loss the tests bear out, in the middle of the range: 1 as built in, 2 twice the loss on the log [-]. */
  readonly slope: { readonly prior: number; readonly posterior: number };
}

/** Doses beyond the built-in range throw: a caller asks within `validTo`. */
export function retention(
  stock: LineStock,
  cause: RetentionCause,
  model: StockModel | undefined,
  points: readonly { readonly dose: number; readonly strength: number }[],
): Retention {
  const validTo = lastDose(stock, cause.kind);
  const known = testedFactors(stock, model);
  const value = (factors: StockFactors) => (dose: number, confidence: number) => {
    requireDose(dose, validTo);
    const worn = dose === 0 ? [] : [factors[cause.kind](dose)];
    const { strength, sigmaLog } = combineFactors(stock.rated.strength, [factors.level(), ...worn]);
    return { central: strength, lower: strength * Math.exp(-normalQuantile(confidence) * sigmaLog) };
  };
  // Against the logarithm of what the built-in curve leaves, the curve itself is a straight line.
  const x = (dose: number) => Math.log(builtInFactor(stock, cause.kind, requireDose(dose, validTo)).value);
  const alone = updateRegression(
    VAGUE,
    points.map(({ dose, strength }): RegressionPoint => ({ x: x(dose), y: Math.log(strength) })),
  );
  return {
    cause,
    unit: cause.kind === "sun" ? "months of full sun" : "falls",
    validTo,
    basis: builtInFactor(stock, cause.kind, 0).basis,
    testCount: points.length,
    prior: value(builtInFactors(stock)),
    tests: (dose, confidence) => {
      const prediction = points.length > 2 ? predict(alone, x(dose)) : undefined;
      if (prediction === undefined) return undefined;
      return { central: Math.exp(prediction.centre), lower: Math.exp(lowerPrediction(prediction, confidence)) };
    },
    posterior: value(known),
    slope: { prior: 1, posterior: Math.log(known[cause.kind](validTo / 2).value) / x(validTo / 2) },
  };
}

function requireDose(dose: number, edge: number): number {
  if (dose >= 0 && dose <= edge) return dose;
  throw new RangeError(`a dose of ${dose} is outside 0 to ${edge}, which the built-in curve covers`);
}
