/**
 * The three families of strength distributions, all of location–scale form: y = μ + σ·z with y = x (normal) or y = ln x
 * (lognormal, Weibull) and z standard normal or smallest extreme value. Weibull scale = e^μ, shape = 1/σ.
 */
import { HALF_LOG_2PI } from "./constants.ts";
import { logNormalCdf, normalQuantile } from "./normal.ts";

/** Families that a strength may follow. */
export type FamilyName = "normal" | "lognormal" | "weibull";
/** All families. */
export const FAMILY_NAMES: readonly FamilyName[] = ["normal", "lognormal", "weibull"];

export interface Family {
  readonly name: FamilyName;
  /** Works on ln x. */
  readonly logarithmic: boolean;
  /** ln of the standard density at z. */
  readonly logDensity: (z: number) => number;
  /** ln P(Z ≤ z). */
  readonly logCdf: (z: number) => number;
  /** ln P(Z > z). */
  readonly logSurvival: (z: number) => number;
  /** z with P(Z ≤ z) = p. */
  readonly quantile: (p: number) => number;
}

const normalShape = {
  logDensity: (z: number) => -0.5 * z * z - HALF_LOG_2PI,
  logCdf: logNormalCdf,
  logSurvival: (z: number) => logNormalCdf(-z),
  quantile: normalQuantile,
};

export const FAMILIES: Readonly<Record<FamilyName, Family>> = {
  normal: { name: "normal", logarithmic: false, ...normalShape },
  lognormal: { name: "lognormal", logarithmic: true, ...normalShape },
  weibull: {
    name: "weibull",
    logarithmic: true,
    logDensity: (z) => z - Math.exp(z),
    logCdf: (z) => Math.log(-Math.expm1(-Math.exp(z))),
    logSurvival: (z) => -Math.exp(z),
    quantile: (p) => Math.log(-Math.log1p(-p)),
  },
};

/** Location μ and ln σ. Optimising ln σ keeps σ positive and its likelihood nearly quadratic. */
export interface LocationScale {
  readonly location: number;
  readonly logScale: number;
}

/** Quantile p of a fitted family, in the unit of the sample. */
export function familyQuantile(name: FamilyName, { location, logScale }: LocationScale, p: number): number {
  const family = FAMILIES[name];
  const y = location + Math.exp(logScale) * family.quantile(p);
  return family.logarithmic ? Math.exp(y) : y;
}
