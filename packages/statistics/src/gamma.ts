/** Gamma function and its incomplete forms. */
import { HALF_LOG_2PI } from "./constants.ts";

/** Lanczos coefficients for g = 7, nine terms (P. Godfrey's set): relative error below 1e-14. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;
/** A little above the spacing of doubles near 1: below it a fraction may swing between two neighbours for ever. */
const EPSILON = 3e-16;
const MOST_TERMS = 10_000;

/** ln Γ(x) for x > 0 [-]. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  const t = z + 7.5;
  let sum: number = LANCZOS[0];
  for (let i = 1; i < LANCZOS.length; i++) sum += LANCZOS[i]! / (z + i);
  return HALF_LOG_2PI + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Regularised lower incomplete gamma function P(a, x) [-]. */
export function gammaP(a: number, x: number): number {
  if (x <= 0) return 0;
  return x < a + 1 ? series(a, x) : 1 - continuedFraction(a, x);
}

/** Regularised upper incomplete gamma function Q(a, x) = 1 − P, without cancellation in its tail [-]. */
export function gammaQ(a: number, x: number): number {
  if (x <= 0) return 1;
  return x < a + 1 ? 1 - series(a, x) : continuedFraction(a, x);
}

/** Abramowitz & Stegun 6.5.29. */
function series(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < MOST_TERMS; n++) {
    term *= x / (a + n);
    sum += term;
    if (!(term >= sum * EPSILON)) break;
  }
  return sum * Math.exp(a * Math.log(x) - x - logGamma(a));
}

/** Abramowitz & Stegun 6.5.31, evaluated forward by Lentz's method. */
function continuedFraction(a: number, x: number): number {
  const tiny = 1e-300;
  let b = x + 1 - a;
  let c = 1 / tiny;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < MOST_TERMS; i++) {
    const an = -i * (i - a);
    b += 2;
    d = 1 / nonZero(an * d + b, tiny);
    c = nonZero(b + an / c, tiny);
    h *= d * c;
    // Written so that not-a-number ends it too.
    if (!(Math.abs(d * c - 1) >= EPSILON)) break;
  }
  return h * Math.exp(a * Math.log(x) - x - logGamma(a));
}

export function nonZero(value: number, tiny: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}
