/** Student's t distribution, central and non-central. */
import { incompleteBeta } from "./beta.ts";
import { findRoot } from "./findRoot.ts";
import { logGamma } from "./gamma.ts";
import { normalCdf, normalQuantile } from "./normal.ts";

export function tCdf(t: number, freedom: number): number {
  const w = freedom + t * t;
  const tail = 0.5 * incompleteBeta(freedom / w, freedom / 2, 0.5, (t * t) / w);
  return t < 0 ? tail : 1 - tail;
}

/** t with P(T ≤ t) = p for `freedom` degrees of freedom, which need not be whole [-]. */
export function tQuantile(p: number, freedom: number): number {
  if (p === 0.5) return 0;
  if (p < 0.5) return -tQuantile(1 - p, freedom);
  return findRoot(
    (t) => 1 - p - tCdf(-t, freedom),
    0,
    upperEnd((t) => tCdf(-t, freedom) < 1 - p, 2),
  );
}

/**
 * P(T ≤ t) of the non-central t distribution: Poisson-weighted sum of incomplete beta functions (R. V. Lenth,
 * Applied Statistics 38 (1989) 185–189), summed outward from the largest weight so that nothing underflows.
 */
export function noncentralTCdf(t: number, freedom: number, delta: number): number {
  if (t < 0) return 1 - noncentralTCdf(-t, freedom, -delta);
  const lambda = (delta * delta) / 2;
  const [x, y] = [(t * t) / (t * t + freedom), freedom / (t * t + freedom)];
  const term = (j: number): number => {
    const logP = lambda === 0 ? (j === 0 ? 0 : -Infinity) : j * Math.log(lambda) - lambda - logGamma(j + 1);
    const logQ = lambda === 0 ? (j === 0 ? 0 : -Infinity) : j * Math.log(lambda) - lambda - logGamma(j + 1.5);
    const even = Math.exp(logP) * incompleteBeta(x, j + 0.5, freedom / 2, y);
    return even + (delta / Math.SQRT2) * Math.exp(logQ) * incompleteBeta(x, j + 1, freedom / 2, y);
  };
  const mode = Math.floor(lambda);
  const reach = Math.ceil(12 * Math.sqrt(lambda + 1)) + 20;
  let sum = 0;
  for (let j = Math.max(0, mode - reach); j <= mode + reach; j++) sum += term(j);
  return Math.min(1, Math.max(0, normalCdf(-delta) + 0.5 * sum));
}

/** t with P(T ≤ t) = p of the non-central t distribution [-]. */
export function noncentralTQuantile(p: number, freedom: number, delta: number): number {
  const f = (t: number) => noncentralTCdf(t, freedom, delta) - p;
  const guess = delta + normalQuantile(p);
  const high = upperEnd((t) => f(t) > 0, Math.max(1, guess));
  const low = -upperEnd((t) => f(-t) < 0, Math.max(1, -guess));
  return findRoot(f, low, high);
}

function upperEnd(reached: (t: number) => boolean, start: number): number {
  let end = start;
  while (!reached(end)) {
    end *= 2;
    if (!Number.isFinite(end)) throw new Error("no quantile found: the distribution does not reach the probability");
  }
  return end;
}
