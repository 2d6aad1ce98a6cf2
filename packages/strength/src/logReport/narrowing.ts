/** The gain of further tests: the characteristic value to be expected if further tests scatter like the present ones. */

import {
  logGamma,
  mean,
  natrellaFactor,
  normalQuantile,
  standardDeviation,
  toleranceFactor,
  toleranceFactorKnownSpread,
} from "@secondline/statistics";
import type { Characteristic } from "./characteristic.ts";

export interface Narrowing {
  /** Number of further tests; infinite for the limit of testing [-]. */
  readonly more: number;
  /** Expected characteristic value [N]. */
  readonly value: number;
  /** Rise over the present value [N]. */
  readonly gain: number;
}

/** Numbers of further tests that are tried [-]. */
const MORE_TESTS = [1, 2, 3, 5, 10, 20] as const;
/** Coefficient of variation expected of one or two tests, which cannot show one: that of used webbing [-]. */
const EXPECTED_SPREAD = 0.1;
/** How much farther below the centre the lowest of the families lies than the lognormal one, among few tests [-]. */
const LOWEST_FAMILY = 1.25;

/**
 * The expected standard deviation of a normal sample over that of its population (W. A. Shewhart's c₄). Small samples show too
 * little scatter, and further tests bring it to light [-].
 */
export function deviationShown(n: number): number {
  return Math.sqrt(2 / (n - 1)) * Math.exp(logGamma(n / 2) - logGamma((n - 1) / 2));
}

/** For hundreds of tests the approximation is as good, and a thousand times faster. */
const factorFor = (n: number, content: number, confidence: number): number =>
  (n > 100 ? natrellaFactor(n, content, confidence) : undefined) ?? toleranceFactor(n, content, confidence);

/**
 * `now`: the present characteristic value. It is scaled with the gains of the lognormal factors; `test/testNext.test.ts` checks
 * these against simulated further tests. Empty if the spread is 0.
 */
export function narrowing(values: readonly number[], now: Characteristic): Narrowing[] {
  const { content, confidence } = now;
  const n = values.length;
  const logs = values.map(Math.log);
  const shown = standardDeviation(logs) ?? 0;
  if (n > 2 && shown === 0) return [];
  // From here on numbers are distances of the value below the centre, in logarithms.
  const own = n > 2 ? shown / deviationShown(n) : Math.max(EXPECTED_SPREAD, shown);
  const below = n > 2 ? factorFor(n, content, confidence) * shown : mean(logs) - Math.log(now.value);
  const at = (more: number): Narrowing => {
    const total = n + more;
    const then = Number.isFinite(more)
      ? total > 2
        ? factorFor(total, content, confidence) * own * deviationShown(total) * (n > 2 ? 1 : LOWEST_FAMILY)
        : below *
          (toleranceFactorKnownSpread(total, content, confidence) / toleranceFactorKnownSpread(n, content, confidence))
      : normalQuantile(content) * own;
    const value = now.value * Math.exp(below - then);
    return { more, value, gain: value - now.value };
  };
  return [...MORE_TESTS, Number.POSITIVE_INFINITY].map(at);
}
