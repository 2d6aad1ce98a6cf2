import { describe, expect, it } from "vitest";
import { type NormalMargins, normalCdf, seededRandom, unionChance } from "../src/index.ts";

const SAMPLES = 40_000;
const union = (margins: NormalMargins, seed = 3) => unionChance(margins, seededRandom(seed), SAMPLES);
const independent = (means: readonly number[]): NormalMargins => ({
  means,
  covariance: means.map((_, i) => means.map((__, j) => (i === j ? 1 : 0))),
});
const within = (found: number, exact: number, relative: number) =>
  expect(Math.abs(found / exact - 1)).toBeLessThan(relative);

describe("the chance of a union of failures", () => {
  it("is exact for one part", () => {
    const { each, any, least } = union({ means: [4.753], covariance: [[1]] });
    expect(any).toBe(normalCdf(-4.753));
    expect(each[0]).toBe(any);
    expect(least[0]).toBeCloseTo(1, 9);
  });

  it.each([1, 2.5, 4.2, 5.2])("of independent parts at %d deviations is the closed form within 2 %", (beta) => {
    const means = [0, 0.1, 0.2, 0.5, 3].map((more) => beta + more);
    const holds = means.reduce((sum, mean) => sum + Math.log1p(-normalCdf(-mean)), 0);
    within(union(independent(means)).any, -Math.expm1(holds), 0.02);
  });

  it("of parts that share their one cause is that of the weakest, not of all together", () => {
    const means = [4.7, 4.8, 4.9, 4.7];
    const any = union({ means, covariance: means.map(() => means.map(() => 1)) }).any;
    within(any, normalCdf(-4.7), 0.02);
  });

  it("of two that half share it, is the closed form of their joint scatter", () => {
    // Both hold with 1/4 + asin ρ / 2π (W. F. Sheppard, 1899).
    const any = union({
      means: [0, 0],
      covariance: [
        [1, 0.5],
        [0.5, 1],
      ],
    }).any;
    within(any, 1 - (1 / 4 + Math.asin(0.5) / (2 * Math.PI)), 0.02);
  });

  it("takes a part that is there in some cases only as often as it is there", () => {
    const margins = independent([2, 2.5]);
    const cases = [
      { chance: 0.25, has: [true, true] },
      { chance: 0.75, has: [false, true] },
    ];
    const { each, any } = unionChance(margins, seededRandom(1), SAMPLES, cases);
    const [a, b] = [normalCdf(-2), normalCdf(-2.5)];
    expect(each[0]).toBeCloseTo(0.25 * a, 12);
    within(any, 0.25 * (a + b - a * b) + 0.75 * b, 0.02);
  });

  it("names who is least as often as symmetry says", () => {
    const { least } = union(independent([3, 3, 3, 9]));
    for (const i of [0, 1, 2]) expect(Math.abs(least[i]! - 1 / 3)).toBeLessThan(0.01);
    expect(least[3]).toBeLessThan(0.001);
  });
});
