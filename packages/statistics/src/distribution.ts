/** Distributions of loads and strengths, by their everyday parameters. */
import { logGamma } from "./gamma.ts";
import { normalCdf, normalDensity, normalQuantile } from "./normal.ts";

/** `mean`, `deviation` and `scale` in the unit of x, above 0 but for the mean of a normal one; `shape` above 0 [-]. */
export type Distribution =
  | { readonly kind: "normal" | "lognormal"; readonly mean: number; readonly deviation: number }
  | { readonly kind: "weibull"; readonly shape: number; readonly scale: number };

/** Location and scale of ln x for a lognormal distribution given by its mean and standard deviation. */
export function lognormalParameters(mean: number, deviation: number): { readonly mu: number; readonly sigma: number } {
  const variance = Math.log1p((deviation / mean) ** 2);
  return { mu: Math.log(mean) - variance / 2, sigma: Math.sqrt(variance) };
}

/** Share of the distribution at or below x; for x below 0 it is 0 for the families on ln x [-]. */
export function cdf(d: Distribution, x: number): number {
  if (d.kind === "normal") return normalCdf((x - d.mean) / d.deviation);
  if (x <= 0) return 0;
  if (d.kind === "weibull") return -Math.expm1(-((x / d.scale) ** d.shape));
  const { mu, sigma } = lognormalParameters(d.mean, d.deviation);
  return normalCdf((Math.log(x) - mu) / sigma);
}

/** Probability density at x, per unit of x. */
export function density(d: Distribution, x: number): number {
  if (d.kind === "normal") return normalDensity((x - d.mean) / d.deviation) / d.deviation;
  if (x <= 0) return 0;
  if (d.kind === "weibull") {
    const z = x / d.scale;
    return (d.shape / d.scale) * z ** (d.shape - 1) * Math.exp(-(z ** d.shape));
  }
  const { mu, sigma } = lognormalParameters(d.mean, d.deviation);
  return normalDensity((Math.log(x) - mu) / sigma) / (sigma * x);
}

/** Value below which the share p lies, in the unit of x; p between 0 and 1, else the normal and lognormal ones throw. */
export function quantile(d: Distribution, p: number): number {
  if (d.kind === "normal") return d.mean + d.deviation * normalQuantile(p);
  if (d.kind === "weibull") return d.scale * (-Math.log1p(-p)) ** (1 / d.shape);
  const { mu, sigma } = lognormalParameters(d.mean, d.deviation);
  return Math.exp(mu + sigma * normalQuantile(p));
}

/** Mean, in the unit of x. */
export function distributionMean(d: Distribution): number {
  return d.kind === "weibull" ? d.scale * Math.exp(logGamma(1 + 1 / d.shape)) : d.mean;
}
