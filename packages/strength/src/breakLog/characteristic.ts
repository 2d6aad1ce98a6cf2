/**
 * The characteristic value of a group of break tests: what 95 % of such parts reach, as surely as asked. Picks the most
 * cautious of the methods that the sample allows, and says which.
 */

import { logSpread } from "../derating/lognormal.ts";
import { lognormalLowerBound, normalLowerBound } from "../statistics/bounds.ts";
import type { Fit } from "../statistics/fit.ts";
import { isComplete, mean, type Observation, standardDeviation } from "../statistics/observation.ts";
import { profileLowerBound } from "../statistics/profile.ts";
import { toleranceFactorKnownSpread } from "../statistics/tolerance.ts";

/** Share of parts that reach the characteristic value [-]. */
export const CONTENT = 0.95;
/** Coefficient of variation assumed where one or two tests cannot show one: twice that of a good make of webbing [-]. */
export const ASSUMED_SPREAD = 0.2;
/** Failures from which the likelihood bound is trusted on its own. */
const FAILURES_FOR_LIKELIHOOD = 10;

export interface Characteristic {
  readonly confidence: number;
  /** Value that 95 % of such parts reach [N]. */
  readonly value: number;
  /** How it was found, in words. */
  readonly method: string;
}

/** `fits`: those that succeeded and that the sample does not reject; may be empty. */
export function characteristicValue(
  sample: readonly Observation[],
  fits: readonly Fit[],
  confidence: number,
): Characteristic {
  const candidates = [...asIfBroken(sample, confidence), ...likelihoodBounds(sample, fits, confidence)];
  const usable = candidates.filter((c) => Number.isFinite(c.value) && c.value > 0);
  // Bounds at or below zero say nothing; the lognormal one never is.
  return usable.reduce((least, c) => (c.value < least.value ? c : least));
}

/**
 * Bounds from the values as they stand. A survivor counts as broken where the test stopped, an interval at its lower end:
 * on the safe side for the level, not for the spread, hence the floor under the spread when anything is censored. A
 * sample known only to have broken below a load counts at half that load.
 */
function asIfBroken(sample: readonly Observation[], confidence: number): Characteristic[] {
  const values = sample.map((o) => (o.kind === "between" ? o.from : o.kind === "below" ? o.value / 2 : o.value));
  const n = values.length;
  if (n <= 2 || !isComplete(sample)) return [assumedSpreadBound(values, confidence, isComplete(sample))];
  return [
    { confidence, value: normalLowerBound(values, CONTENT, confidence)!, method: `normal, exact factor for n = ${n}` },
    {
      confidence,
      value: lognormalLowerBound(values, CONTENT, confidence)!,
      method: `lognormal, exact factor for n = ${n}`,
    },
  ];
}

function assumedSpreadBound(values: readonly number[], confidence: number, complete: boolean): Characteristic {
  const logs = values.map(Math.log);
  const sigma = Math.max(logSpread(ASSUMED_SPREAD), standardDeviation(logs) ?? 0);
  const k = toleranceFactorKnownSpread(values.length, CONTENT, confidence);
  const why = complete
    ? `${values.length === 1 ? "one test cannot" : "two tests can hardly"} show a spread`
    : "censored tests taken as broken";
  return {
    confidence,
    value: Math.exp(mean(logs) - k * sigma),
    method: `lognormal with a spread of at least ${Math.round(100 * ASSUMED_SPREAD)} % assumed: ${why}`,
  };
}

function likelihoodBounds(sample: readonly Observation[], fits: readonly Fit[], confidence: number): Characteristic[] {
  const failures = sample.filter((o) => o.kind !== "above").length;
  if (isComplete(sample) && failures < FAILURES_FOR_LIKELIHOOD) return [];
  return fits
    .filter((fit) => !(isComplete(sample) && fit.family !== "weibull"))
    .map((fit) => ({
      confidence,
      value: profileLowerBound(sample, fit, 1 - CONTENT, confidence),
      method: `${fit.family}, profile likelihood`,
    }));
}
