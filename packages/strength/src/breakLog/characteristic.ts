/**
 * The characteristic value of a group of break tests: what 95 % of such parts reach, as surely as asked. Picks the most
 * cautious of the methods that the sample allows, and says which.
 */

import { logSpread } from "../derating/lognormal.ts";
import { lognormalLowerBound, normalLowerBound } from "../statistics/bounds.ts";
import type { FamilyName } from "../statistics/family.ts";
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
  readonly family: FamilyName;
  /** How it was found, in words. */
  readonly method: string;
}

/** `fits`: those that succeeded and that the sample does not reject; may be empty. */
export function characteristicValue(
  sample: readonly Observation[],
  fits: readonly Fit[],
  confidence: number,
): Characteristic {
  const usable = methods(sample, fits).filter((method) => method.bound(Math.max(confidence, STRICTEST)) > 0);
  const candidates = usable.map(({ bound, ...how }) => ({ confidence, value: bound(confidence), ...how }));
  return candidates.reduce((least, c) => (c.value < least.value ? c : least));
}

/** A method and its bound at a confidence [N]. */
interface Method {
  readonly family: FamilyName;
  readonly method: string;
  readonly bound: (confidence: number) => number;
}

/**
 * A method whose bound sinks to zero at this confidence says nothing about strength and is left out at every confidence, so
 * that asking for more confidence never raises the value. The lognormal bounds never do.
 */
const STRICTEST = 0.95;

function methods(sample: readonly Observation[], fits: readonly Fit[]): Method[] {
  return [...asIfBroken(sample), ...likelihoodBounds(sample, fits)];
}

/** Every result as a breaking load on the safe side: a survivor where it stopped, an interval at its lower end. */
export function brokenValues(sample: readonly Observation[]): number[] {
  return sample.map((o) => (o.kind === "between" ? o.from : o.kind === "below" ? o.value / 2 : o.value));
}

/** Breaking loads from which a sample can show its own spread. */
const FAILURES_FOR_SPREAD = 3;

/**
 * Bounds from the values as they stand. A survivor counts as broken where the test stopped, an interval at its lower end,
 * "broke below" at half that load: on the safe side for the level. It could make the spread look small, so the breaking
 * loads alone are bounded as well and the lower bound counts.
 */
function asIfBroken(sample: readonly Observation[]): Method[] {
  const values = brokenValues(sample);
  const broken = exactValues(sample);
  if (broken.length < FAILURES_FOR_SPREAD) return [assumedSpreadBound(values, isComplete(sample))];
  // No part scatters by nothing: the machine reads too coarsely, or the numbers were copied.
  if (new Set(broken).size === 1) return [assumedSpreadBound(values, isComplete(sample), "they all broke at one load")];
  if (isComplete(sample)) return exactBounds(values, "");
  return [...exactBounds(values, ", bounds taken as broken"), ...exactBounds(broken, ", bounds left out")];
}

function exactBounds(values: readonly number[], how: string): Method[] {
  const factor = `exact factor for n = ${values.length}${how}`;
  return [
    {
      family: "normal",
      method: `normal, ${factor}`,
      bound: (confidence) => normalLowerBound(values, CONTENT, confidence)!,
    },
    {
      family: "lognormal",
      method: `lognormal, ${factor}`,
      bound: (confidence) => lognormalLowerBound(values, CONTENT, confidence)!,
    },
  ];
}

function assumedSpreadBound(values: readonly number[], complete: boolean, reason?: string): Method {
  const logs = values.map(Math.log);
  const sigma = Math.max(logSpread(ASSUMED_SPREAD), standardDeviation(logs) ?? 0);
  const count = values.length === 1 ? "one test cannot" : "two tests can hardly";
  const why = reason ?? (complete ? `${count} show a spread` : "too few of them broke to show a spread");
  return {
    family: "lognormal",
    method: `lognormal with a spread of at least ${Math.round(100 * ASSUMED_SPREAD)} % assumed: ${why}`,
    bound: (confidence) =>
      Math.exp(mean(logs) - toleranceFactorKnownSpread(values.length, CONTENT, confidence) * sigma),
  };
}

function likelihoodBounds(sample: readonly Observation[], fits: readonly Fit[]): Method[] {
  const failures = sample.filter((o) => o.kind !== "above").length;
  if (isComplete(sample) && failures < FAILURES_FOR_LIKELIHOOD) return [];
  return fits
    .filter((fit) => !(isComplete(sample) && fit.family !== "weibull"))
    .map((fit) => ({
      family: fit.family,
      method: `${fit.family}, profile likelihood`,
      bound: (confidence) => profileLowerBound(sample, fit, 1 - CONTENT, confidence),
    }));
}
