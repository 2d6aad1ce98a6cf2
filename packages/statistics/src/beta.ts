/** Regularised incomplete beta function and its inverse. */

import { findRoot } from "./findRoot.ts";
import { logGamma, nonZero } from "./gamma.ts";

/** A little above the spacing of doubles near 1: below it a fraction may swing between two neighbours for ever. */
const EPSILON = 3e-16;
const MOST_TERMS = 10_000;

/** I_x(a, b); `y` is 1 − x, given apart so that nothing is lost when x is close to 1 [-]. */
export function incompleteBeta(x: number, a: number, b: number, y: number = 1 - x): number {
  if (x <= 0) return 0;
  if (y <= 0) return 1;
  const front = Math.exp(a * Math.log(x) + b * Math.log(y) + logGamma(a + b) - logGamma(a) - logGamma(b));
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction(x, a, b)) / a;
  return 1 - (front * betaFraction(y, b, a)) / b;
}

/** Continued fraction 26.5.8 of Abramowitz & Stegun, by Lentz's method. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * x) / (a + 1), tiny);
  let h = d;
  for (let m = 1; m < MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d, tiny);
    c = nonZero(1 + even / c, tiny);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d, tiny);
    c = nonZero(1 + odd / c, tiny);
    h *= d * c;
    // Written so that not-a-number ends it too.
    if (!(Math.abs(d * c - 1) >= EPSILON)) break;
  }
  return h;
}

/** x with I_x(a, b) = p [-]. */
export function betaQuantile(p: number, a: number, b: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return 1;
  return findRoot((x) => incompleteBeta(x, a, b) - p, 0, 1);
}
