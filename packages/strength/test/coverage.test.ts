/** How often a bound holds: the short form. The long one, over all kinds of samples, is `coverage.long.ts`. */

import { seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { characteristicValues } from "../src/logReport/characteristic.ts";
import { coverage, type PopulationKind } from "./populations.ts";

describe("the value that is printed holds as often as it says, in 300 samples", () => {
  it.each<[PopulationKind, number, number, number, number]>([
    ["normal", 5, 1, 0, 0],
    ["lognormal", 10, 1, 0, 0],
    ["weibull", 5, 1, 0, 0],
    ["weibull", 10, 1, 0, 0],
    ["weibull", 10, 1, 0, 0.3],
    ["normal", 10, 2, 0.1, 0],
  ])("%s, n = %i, %i batches with scatter %d, %d censored", (kind, n, batches, between, censored) => {
    const [at75, at95] = coverage(
      kind,
      { n, batches, between, censored },
      0.07,
      (one) => characteristicValues(one.sample, [0.75, 0.95], one).map(({ value }) => value) as [number, number],
      300,
      seededRandom(40 + n),
    );
    // 73 to 90 % and 93 to 99 % in the long run; three standard errors of a share of 300 to the unsafe side.
    expect(at75).toBeGreaterThan(0.73 - 0.077);
    expect(at95).toBeGreaterThan(0.93 - 0.044);
    expect(at75).toBeLessThan(0.97);
  });
});
