/**
 * Strength of a stock against months in the sun, number of falls or another dose of one wear, to be drawn: built in, by the
 * tests alone, and by both together.
 */

import type { Basis, LineStock } from "@secondline/rig";
import {
  lowerPrediction,
  normalQuantile,
  predict,
  type RegressionPoint,
  updateRegression,
  VAGUE_PRIOR,
} from "@secondline/statistics";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { combineFactors } from "../derating/lognormal.ts";
import { factorOf } from "./stockComparison.ts";
import type { StockModel } from "./stockModel.ts";
import { builtInFactors, type StockFactors, testedFactors } from "./testedStock.ts";
import { builtInFactor, doseUnit, lastDose, type WearId } from "./wearFactors.ts";

/** Strength at a dose by one of the three. */
export interface RetentionValue {
  /** Central value [N]. */
  readonly central: number;
  /** Values that one further part exceeds, and stays below, with the confidence [N]. */
  readonly lower: number;
  readonly upper: number;
}

/** A test of a new piece, or of one with this wear alone, at its dose. */
export interface RetentionTest {
  readonly dose: number;
  readonly test: BreakTest;
}

export interface Retention {
  readonly cause: WearId;
  /** Unit of the dose. */
  readonly unit: string;
  /** Largest dose that the built-in curve covers; nothing is said beyond it [-]. */
  readonly validTo: number;
  readonly basis: Basis;
  /** Number of tests of new pieces and of pieces with this wear alone. */
  readonly tested: readonly RetentionTest[];
  /** Of these, those that broke at a known load. */
  readonly testCount: number;
  readonly prior: (dose: number, confidence: number) => RetentionValue;
  /** Undefined at every dose if there are fewer than three breaking loads. */
  readonly tests: (dose: number, confidence: number) => Omit<RetentionValue, "upper"> | undefined;
  readonly posterior: (dose: number, confidence: number) => RetentionValue;
  /**
   * Loss by the tests over the built-in loss, in the middle of the range and in logarithms: 1 as built in, 2 twice that
   * loss [-].
   */
  readonly slope: { readonly prior: number; readonly posterior: number };
}

/** Wears whose curve begins at no loss, so that a new piece lies on it. A clamp or a seam takes its share at once. */
const WEARS_FROM_NO_LOSS: ReadonlySet<WearId> = new Set<WearId>(["sun", "falls", "leash falls"]);

export const beginsNew = (cause: WearId): boolean => WEARS_FROM_NO_LOSS.has(cause);

/** Doses beyond the built-in range throw: a caller asks within `validTo`. */
export function retention(
  stock: LineStock,
  cause: WearId,
  model: StockModel | undefined,
  tested: readonly RetentionTest[],
): Retention {
  const points = tested.flatMap(({ dose, test: { result } }) =>
    result.kind === "exact" ? [{ dose, strength: result.value }] : [],
  );
  const validTo = lastDose(stock, cause);
  const known = testedFactors(stock, model);
  const value = (factors: StockFactors) => (dose: number, confidence: number) => {
    requireDose(dose, validTo);
    const worn = dose === 0 && beginsNew(cause) ? [] : [factorOf(factors, { id: cause, dose })];
    const { strength, sigmaLog } = combineFactors(stock.rated.strength, [factors.level(), ...worn]);
    const away = Math.exp(normalQuantile(confidence) * sigmaLog);
    return { central: strength, lower: strength / away, upper: strength * away };
  };
  // Over the logarithm of the built-in factor, the built-in curve is a straight line.
  const x = (dose: number) => Math.log(builtInFactor(stock, cause, requireDose(dose, validTo)).value);
  const alone = updateRegression(
    VAGUE_PRIOR,
    points.map(({ dose, strength }): RegressionPoint => ({ x: x(dose), y: Math.log(strength) })),
  );
  return {
    cause,
    unit: doseUnit(cause) ?? "",
    validTo,
    basis: builtInFactor(stock, cause, 0).basis,
    tested,
    testCount: points.length,
    prior: value(builtInFactors(stock)),
    tests: (dose, confidence) => {
      const prediction = points.length > 2 ? predict(alone, x(dose)) : undefined;
      if (prediction === undefined) return undefined;
      return { central: Math.exp(prediction.centre), lower: Math.exp(lowerPrediction(prediction, confidence)) };
    },
    posterior: value(known),
    slope: { prior: 1, posterior: Math.log(factorOf(known, { id: cause, dose: validTo / 2 }).value) / x(validTo / 2) },
  };
}

function requireDose(dose: number, edge: number): number {
  if (dose >= 0 && dose <= edge) return dose;
  throw new RangeError(`a dose of ${dose} is outside 0 to ${edge}, which the built-in curve covers`);
}
