/** The told gain of further tests against simulated further tests. */

import { exactly, seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { characteristicValue } from "../src/index.ts";
import { narrowing } from "../src/logReport/narrowing.ts";

/** Claimed and true gain of `more` further tests, as shares of the present value, on average over samples. */
function gains(n: number, more: 1 | 5, scatter: number, samples: number) {
  const random = seededRandom(5 + n);
  let [claimed, found] = [0, 0];
  for (let i = 0; i < samples; i++) {
    const values = Array.from({ length: n + more }, () => 20_000 * Math.exp(scatter * random.normal()));
    const now = characteristicValue(exactly(values.slice(0, n)), 0.75);
    const then = characteristicValue(exactly(values), 0.75);
    claimed += narrowing(values.slice(0, n), now).find((step) => step.more === more)!.gain / now.value;
    found += (then.value - now.value) / now.value;
  }
  return { claimed: claimed / samples, found: found / samples };
}

describe("the gain that further tests are said to bring is found when they are made", () => {
  it.each([
    [3, 1, 0.08],
    [3, 5, 0.08],
    [5, 1, 0.08],
    [5, 5, 0.12],
    [10, 5, 0.08],
  ] as const)("%i tests and %i more, scatter %d", (n, more, scatter) => {
    const { claimed, found } = gains(n, more, scatter, 600);
    // No more is claimed than is found, by more than a percent of the value; and not much less.
    expect(claimed).toBeLessThan(found + 0.01);
    expect(claimed).toBeGreaterThan(0.4 * found - 0.005);
  });

  it("one and two tests are taken to scatter by a tenth, which is said", () => {
    for (const n of [1, 2]) {
      const { claimed, found } = gains(n, 5, 0.1, 400);
      expect(claimed).toBeLessThan(found + 0.03);
    }
  });
});
