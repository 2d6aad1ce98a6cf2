/** How often a bound holds: the short form. The long one, over all kinds of samples, is `coverage.long.ts`. */
import { describe, expect, it } from "vitest";
import { characteristicValues, lognormalLowerBound, normalLowerBound, seededRandom } from "../src/index.ts";
import { coverage, type PopulationKind } from "./populations.ts";

/** 5 % value of the standard normal distribution. */
const FIVE_PERCENT = -1.6448536269514722;

it.each([
  [3, 0.75],
  [5, 0.95],
  [12, 0.95],
])("10,000 samples of %i show that an exact factor with confidence %d covers as often", (n, confidence) => {
  const random = seededRandom(17 + n);
  const samples = 10_000;
  let [normal, lognormal] = [0, 0];
  for (let i = 0; i < samples; i++) {
    const values = Array.from({ length: n }, () => 20 + 2 * random.normal());
    if (normalLowerBound(values, 0.95, confidence)! <= 20 + 2 * FIVE_PERCENT) normal++;
    const logs = values.map((x) => Math.exp(x / 20));
    if (lognormalLowerBound(logs, 0.95, confidence)! <= Math.exp((20 + 2 * FIVE_PERCENT) / 20)) lognormal++;
  }
  // Three standard errors of a share of 10,000.
  const error = 3 * Math.sqrt((confidence * (1 - confidence)) / samples);
  expect(Math.abs(normal / samples - confidence)).toBeLessThan(error);
  expect(lognormal).toBe(normal);
});

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
