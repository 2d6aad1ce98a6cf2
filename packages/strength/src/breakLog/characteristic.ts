/**
 * The characteristic value of a group of break tests: what 95 % of such parts reach, as surely as asked. Picks the most
 * cautious of the methods that the sample allows, and says which.
 */

import { logSpread } from "../derating/lognormal.ts";
import { lognormalLowerBound, normalLowerBound } from "../statistics/bounds.ts";
import type { Fit } from "../statistics/fit.ts";
import { exactValues, isComplete, mean, type Observation, standardDeviation } from "../statistics/observation.ts";
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

/** Breaking loads from which a sample can show its own spread. */
const FAILURES_FOR_SPREAD = 3;

/**
 * Bounds from the values as they stand. A survivor counts as broken where the test stopped, an interval at its lower end,
 * "broke below" at half that load: on the safe side for the level. It could make the spread look small, so the breaking
 * loads alone are bounded as well and the lower bound counts.
 */
function asIfBroken(sample: readonly Observation[], confidence: number): Characteristic[] {
  const values = sample.map((o) => (o.kind === "between" ? o.from : o.kind === "below" ? o.value / 2 : o.value));
  const broken = exactValues(sample);
  if (broken.length < FAILURES_FOR_SPREAD) return [assumedSpreadBound(values, confidence, isComplete(sample))];
  if (isComplete(sample)) return exactBounds(values, confidence, "");
  return [
    ...exactBounds(values, confidence, ", bounds taken as broken"),
    ...exactBounds(broken, confidence, ", bounds left out"),
  ];
}

function exactBounds(values: readonly number[], confidence: number, how: string): Characteristic[] {
  const method = (family: string) => `${family}, exact factor for n = ${values.length}${how}`;
  return [
    { confidence, value: normalLowerBound(values, CONTENT, confidence)!, method: method("normal") },
    { confidence, value: lognormalLowerBound(values, CONTENT, confidence)!, method: method("lognormal") },
  ];
}

function assumedSpreadBound(values: readonly number[], confidence: number, complete: boolean): Characteristic {
  const logs = values.map(Math.log);
  const sigma = Math.max(logSpread(ASSUMED_SPREAD), standardDeviation(logs) ?? 0);
  const k = toleranceFactorKnownSpread(values.length, CONTENT, confidence);
  const count = values.length === 1 ? "one test cannot" : "two tests can hardly";
  const why = complete ? `${count} show a spread` : "too few of them broke to show a spread";
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
