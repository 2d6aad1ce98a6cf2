/** Load–strength interference: how likely a load exceeds a strength, and which of several strengths is least. */

import { cdf, type Distribution, density, lognormalParameters, quantile } from "./distribution.ts";
import { normalCdf } from "./normal.ts";

/** Probability that the load exceeds the strength: in closed form if there is one, else by quadrature [-]. */
export function failureProbability(strength: Distribution, load: Distribution): number {
  if (strength.kind === "normal" && load.kind === "normal") {
    return normalCdf(-(strength.mean - load.mean) / Math.hypot(strength.deviation, load.deviation));
  }
  if (strength.kind === "lognormal" && load.kind === "lognormal") {
    const [r, s] = [
      lognormalParameters(strength.mean, strength.deviation),
      lognormalParameters(load.mean, load.deviation),
    ];
    return normalCdf(-(r.mu - s.mu) / Math.hypot(r.sigma, s.sigma));
  }
  // Integrates over the load's own probability: the integrand is bounded, and the thin tail of the load still has its points.
  const [low, high] = [quantile(load, 1e-15), quantile(load, 1 - 1e-15)];
  return integrate((x) => cdf(strength, x) * density(load, x), low, high);
}

/** Probability of each of several independent strengths being the least, as a common load grows [-]. */
export function leastShares(strengths: readonly Distribution[]): number[] {
  const low = Math.min(...strengths.map((d) => quantile(d, 1e-15)));
  const high = Math.max(...strengths.map((d) => quantile(d, 1 - 1e-15)));
  return strengths.map((own, i) =>
    integrate(
      (x) => strengths.reduce((product, d, j) => (j === i ? product : product * (1 - cdf(d, x))), density(own, x)),
      low,
      high,
    ),
  );
}

/** Simpson's rule on a fixed fine mesh: the integrands are smooth and vanish at both ends. */
function integrate(f: (x: number) => number, from: number, to: number): number {
  const intervals = 4000;
  const h = (to - from) / intervals;
  let sum = f(from) + f(to);
  for (let i = 1; i < intervals; i++) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}
