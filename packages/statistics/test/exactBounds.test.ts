import { expect, it } from "vitest";
import { lognormalLowerBound, normalLowerBound, seededRandom } from "../src/index.ts";

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
