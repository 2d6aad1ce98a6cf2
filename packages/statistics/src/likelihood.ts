/** Log-likelihood of a sample with exact, censored and interval observations. */
import { HALF_LOG_2PI } from "./constants.ts";
import { FAMILIES, type FamilyName, type LocationScale } from "./family.ts";
import { normalTail } from "./normalTail.ts";
import type { Observation } from "./observation.ts";

/**
 * Log-likelihood in the unit of the sample, so that families can be compared [-]. It is made for many shapes: the logarithms
 * are taken once, and a complete normal sample is two sums.
 */
export function likelihoodOf(sample: readonly Observation[], name: FamilyName): (shape: LocationScale) => number {
  const family = FAMILIES[name];
  const y = (x: number) => (family.logarithmic ? Math.log(x) : x);
  const exact = Float64Array.from(sample.flatMap((o) => (o.kind === "exact" ? [y(o.value)] : [])));
  const above = Float64Array.from(sample.flatMap((o) => (o.kind === "above" ? [y(o.value)] : [])));
  const below = Float64Array.from(sample.flatMap((o) => (o.kind === "below" ? [y(o.value)] : [])));
  const between = sample.flatMap((o) => (o.kind === "between" ? [[y(o.from), y(o.to)] as const] : []));
  const jacobian = family.logarithmic ? exact.reduce((sum, v) => sum + v, 0) : 0;
  const n = exact.length;
  const mean = exact.reduce((sum, v) => sum + v, 0) / Math.max(1, n);
  const squares = exact.reduce((sum, v) => sum + (v - mean) ** 2, 0);
  const normal = name !== "weibull";
  // The fast tail as far as it has all its digits, the exact one farther out.
  const survival = (z: number) => (normal && z < 30 ? Math.log(normalTail(z)) : family.logSurvival(z));
  return ({ location, logScale }) => {
    const sigma = Math.exp(logScale);
    let sum = -n * logScale - jacobian;
    if (normal) sum -= n * HALF_LOG_2PI + (squares + n * (mean - location) ** 2) / (2 * sigma * sigma);
    else for (const v of exact) sum += family.logDensity((v - location) / sigma);
    for (const v of above) sum += survival((v - location) / sigma);
    for (const v of below) sum += family.logCdf((v - location) / sigma);
    for (const [from, to] of between) {
      sum += logDifference(family.logSurvival((from - location) / sigma), family.logSurvival((to - location) / sigma));
    }
    return sum;
  };
}

/** ln(e^a − e^b) for a > b, without losing small differences. */
function logDifference(a: number, b: number): number {
  return a + Math.log(-Math.expm1(b - a));
}
