import { describe, expect, it } from "vitest";
import { seededRandom } from "../src/index.ts";

const MANY = 4000;

/** Mean and lag-one correlation of numbers uniform on [0, 1). */
function lookAt(values: readonly number[]) {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const off = values.map((value) => value - mean);
  const square = off.reduce((sum, one) => sum + one * one, 0);
  const next = off.slice(1).reduce((sum, one, i) => sum + one * off[i]!, 0);
  return { mean, correlation: next / square };
}

describe("seeded random numbers", () => {
  it("are the same for the same seed, and others for another", () => {
    const three = (seed: number) => {
      const random = seededRandom(seed);
      return [random.uniform(), random.uniform(), random.normal()];
    };
    expect(three(7)).toEqual(three(7));
    for (const seed of [8, -7, 7 + 2 ** 32]) expect(three(seed)).not.toEqual(three(7));
  });

  it("begin evenly spread over seeds in a row, each unlike the one before", () => {
    const first = Array.from({ length: MANY }, (_, seed) => seededRandom(seed).uniform());
    const { mean, correlation } = lookAt(first);
    // Four standard errors of a mean of uniform numbers, and of a correlation that is none.
    expect(Math.abs(mean - 0.5)).toBeLessThan(4 / Math.sqrt(12 * MANY));
    expect(Math.abs(correlation)).toBeLessThan(4 / Math.sqrt(MANY));
  });

  it("take whole numbers for seeds only", () => {
    expect(() => seededRandom(0.5)).toThrow(/whole number/);
  });
});
