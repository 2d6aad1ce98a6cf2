/** Log-likelihood of a sample with exact, censored and interval observations. */
import { FAMILIES, type FamilyName, type Shape } from "./family.ts";
import type { Observation } from "./observation.ts";

/** Log-likelihood in the unit of the sample, so that families can be compared [-]. */
export function logLikelihood(sample: readonly Observation[], name: FamilyName, { location, logScale }: Shape): number {
  const family = FAMILIES[name];
  const sigma = Math.exp(logScale);
  const y = (x: number) => (family.logarithmic ? Math.log(x) : x);
  const z = (x: number) => (y(x) - location) / sigma;
  let sum = 0;
  for (const o of sample) {
    if (o.kind === "exact") {
      sum += family.logDensity(z(o.value)) - logScale - (family.logarithmic ? Math.log(o.value) : 0);
    } else if (o.kind === "above") sum += family.logSurvival(z(o.value));
    else if (o.kind === "below") sum += family.logCdf(z(o.value));
    else sum += logDifference(family.logSurvival(z(o.from)), family.logSurvival(z(o.to)));
  }
  return sum;
}

/** ln(e^a − e^b) for a > b, without losing small differences. */
function logDifference(a: number, b: number): number {
  return a + Math.log(-Math.expm1(b - a));
}
