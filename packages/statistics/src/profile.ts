/**
 * Profile-likelihood intervals: the values of a quantity for which the largest likelihood is not significantly below the
 * maximum. Meeker & Escobar, *Statistical Methods for Reliability Data*, 1998, ch. 8.
 */
import { FAMILIES, type LocationScale } from "./family.ts";
import { findRootOutward } from "./findRoot.ts";
import type { Fit } from "./fit.ts";
import { likelihoodOf } from "./likelihood.ts";
import { maximiseOne } from "./maximise.ts";
import { normalQuantile } from "./normal.ts";
import type { Observation } from "./observation.ts";

/** The quantity held fixed while the other parameter is free. */
export type ProfiledQuantity = { readonly kind: "quantile"; readonly p: number } | { readonly kind: "logScale" };

/** Two-sided interval; an end that the sample does not bound is infinite. Quantiles are in the unit of the sample. */
export function profileInterval(
  sample: readonly Observation[],
  fit: Fit,
  quantity: ProfiledQuantity,
  confidence: number,
): [low: number, high: number] {
  const z = normalQuantile((1 + confidence) / 2);
  const likelihood = likelihoodOf(sample, fit.family);
  const ends = [-1, 1].map((side) => profileEnd(likelihood, fit, quantity, z, side as -1 | 1));
  return [ends[0]!, ends[1]!];
}

/** One-sided lower confidence bound of the quantile p. */
export function profileLowerBound(sample: readonly Observation[], fit: Fit, p: number, confidence: number): number {
  return profileEnd(likelihoodOf(sample, fit.family), fit, { kind: "quantile", p }, normalQuantile(confidence), -1);
}

function profileEnd(
  likelihood: (shape: LocationScale) => number,
  fit: Fit,
  quantity: ProfiledQuantity,
  z: number,
  side: -1 | 1,
): number {
  const { logarithmic } = FAMILIES[fit.family];
  const centre = quantity.kind === "logScale" ? fit.logScale : quantileOnScale(fit, quantity.p);
  const drop = (value: number) => 2 * (fit.logLikelihood - profile(likelihood, fit, quantity, value)) - z * z;
  const step = quantity.kind === "logScale" ? fit.errors[1] : quantileError(fit, quantity.p);
  const end = findRootOutward(drop, centre, side * step) ?? side * Number.POSITIVE_INFINITY;
  return quantity.kind === "quantile" && logarithmic ? Math.exp(end) : end;
}

/** Largest likelihood with the quantity held at `value`. */
function profile(
  likelihood: (shape: LocationScale) => number,
  fit: Fit,
  quantity: ProfiledQuantity,
  value: number,
): number {
  const at = (shape: LocationScale) => {
    const value = likelihood(shape);
    return Number.isNaN(value) ? -Infinity : value;
  };
  if (quantity.kind === "logScale") {
    // The wider the scale, the further the location may move.
    const reach = 8 * Math.max(fit.errors[0], Math.exp(value));
    return maximiseOne((location) => at({ location, logScale: value }), fit.location - reach, fit.location + reach)
      .value;
  }
  const zp = FAMILIES[fit.family].quantile(quantity.p);
  return maximiseOne(
    (logScale) => at({ location: value - zp * Math.exp(logScale), logScale }),
    fit.logScale - 3,
    fit.logScale + 6,
  ).value;
}

function quantileOnScale(fit: Fit, p: number): number {
  return fit.location + Math.exp(fit.logScale) * FAMILIES[fit.family].quantile(p);
}

function quantileError(fit: Fit, p: number): number {
  return Math.hypot(fit.errors[0], Math.exp(fit.logScale) * FAMILIES[fit.family].quantile(p) * fit.errors[1]);
}
