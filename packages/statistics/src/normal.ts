/** The standard normal distribution. */
import { HALF_LOG_2PI } from "./constants.ts";
import { gammaP, gammaQ } from "./gamma.ts";

const SQRT_2PI = 2.5066282746310002;

/** φ(x) [-]. */
export function normalDensity(x: number): number {
  return Math.exp(-0.5 * x * x) / SQRT_2PI;
}

/** Φ(x), with full relative accuracy in the lower tail [-]. */
export function normalCdf(x: number): number {
  const half = 0.5 * x * x;
  return x < 0 ? 0.5 * gammaQ(0.5, half) : 0.5 + 0.5 * gammaP(0.5, half);
}

/** ln Φ(x) [-]. */
export function logNormalCdf(x: number): number {
  if (x > -30) return Math.log(normalCdf(x));
  const w = 1 / (x * x);
  return -0.5 * x * x - Math.log(-x) - HALF_LOG_2PI + Math.log1p(-w * (1 - 3 * w));
}

/** x with Φ(x) = p: Abramowitz & Stegun 26.2.23, then Halley steps to full accuracy [-]. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) {
    if (p === 0) return -Infinity;
    if (p === 1) return Infinity;
    throw new Error(`a probability must be between 0 and 1, got ${p}`);
  }
  if (p > 0.5) return -normalQuantile(1 - p);
  const t = Math.sqrt(-2 * Math.log(p));
  let x = (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
  for (let i = 0; i < 3; i++) {
    const u = (normalCdf(x) - p) / normalDensity(x);
    x -= u / (1 + 0.5 * x * u);
  }
  return x;
}
