/** Maximum-likelihood fits of a sample. Each may fail on its own, and then gives the reason. */
import { FAMILIES, type FamilyName, familyQuantile, type LocationScale } from "./family.ts";
import { likelihoodOf } from "./likelihood.ts";
import { maximiseTwo } from "./maximise.ts";
import { normalQuantile } from "./normal.ts";
import { mean, type Observation, standardDeviation } from "./observation.ts";

/** The likeliest member of a family; its location and ln scale are of ln x for the lognormal and Weibull ones. */
export interface Fit extends LocationScale {
  readonly ok: true;
  readonly family: FamilyName;
  readonly logLikelihood: number;
  /** Akaike's criterion, and corrected for small samples (undefined for n ≤ 3); less is better. */
  readonly aic: number;
  readonly aicc?: number;
  /** Standard errors of location and ln scale, from the curvature of the likelihood. */
  readonly errors: readonly [number, number];
}
/** Why there is no fit, in words. */
export interface FitFailure {
  readonly ok: false;
  readonly family: FamilyName;
  readonly reason: string;
}

/** Every family has a location and a scale [-]. */
const PARAMETER_COUNT = 2;

/**
 * Maximum likelihood over location and ln scale, with exact, right-, left- and interval-censored observations, all above 0 and
 * in one unit. Fails with a reason if there are fewer than two different breaking loads, or if the likelihood has no maximum.
 * Theory: J. F. Lawless, *Statistical Models and Methods for Lifetime Data*, 2003, ch. 5.
 */
export function fitFamily(sample: readonly Observation[], family: FamilyName): Fit | FitFailure {
  const refuse = (reason: string): FitFailure => ({ ok: false, family, reason });
  const distinct = distinctFailures(sample);
  if (distinct < 2) {
    return refuse(`a fit needs at least two different breaking loads; there ${distinct === 1 ? "is one" : "is none"}`);
  }
  const { logarithmic } = FAMILIES[family];
  const rough = sample.map((o) => roughValue(o)).map((x) => (logarithmic ? Math.log(x) : x));
  const spread = firstSpread(rough);
  const likelihood = likelihoodOf(sample, family);
  const best = maximiseTwo(
    ([location, logScale]) => likelihood({ location, logScale }),
    [mean(rough), Math.log(spread)],
    [spread, 1],
  );
  const [location, logScale] = best.x;
  const [xx, xy, yy] = best.curvature;
  const determinant = xx * yy - xy * xy;
  if (!best.converged || !Number.isFinite(best.value) || determinant <= 0) {
    return refuse("the likelihood has no maximum that could be found: too much of the sample is censored");
  }
  const n = sample.length;
  const aic = 2 * PARAMETER_COUNT - 2 * best.value;
  const aicc =
    n > PARAMETER_COUNT + 1
      ? aic + (2 * PARAMETER_COUNT * (PARAMETER_COUNT + 1)) / (n - PARAMETER_COUNT - 1)
      : undefined;
  return {
    ok: true,
    family,
    location,
    logScale,
    logLikelihood: best.value,
    aic,
    ...(aicc === undefined ? {} : { aicc }),
    errors: [Math.sqrt(-yy / determinant), Math.sqrt(-xx / determinant)],
  };
}

/** Mean of the fitted distribution, and its standard deviation over mean for the families on ln x. */
export function weibullParameters(fit: LocationScale): { readonly scale: number; readonly shape: number } {
  return { scale: Math.exp(fit.location), shape: Math.exp(-fit.logScale) };
}

/** Two-sided interval from the curvature alone, on ln scale; too narrow for small samples: see profileInterval. */
export function waldInterval(fit: Fit, of: "location" | "logScale", confidence: number): [number, number] {
  const z = normalQuantile((1 + confidence) / 2);
  const error = fit.errors[of === "location" ? 0 : 1];
  return [fit[of] - z * error, fit[of] + z * error];
}

/** Best guess of the 5 % value. A quantile of a fitted curve is not a bound. */
export function fittedQuantile(fit: Fit, p: number): number {
  return familyQuantile(fit.family, fit, p);
}

/** Start of the search for the scale: any value above 0 of the sample's order of size. */
function firstSpread(values: readonly number[]): number {
  const deviation = standardDeviation(values) ?? 0;
  if (deviation > 0) return deviation;
  const middle = Math.abs(mean(values));
  return middle > 0 ? 0.1 * middle : 1;
}

function distinctFailures(sample: readonly Observation[]): number {
  const places = sample.flatMap((o) => (o.kind === "exact" ? [o.value] : o.kind === "between" ? [roughValue(o)] : []));
  return new Set(places).size;
}

function roughValue(o: Observation): number {
  return o.kind === "between" ? (o.from + o.to) / 2 : o.value;
}
