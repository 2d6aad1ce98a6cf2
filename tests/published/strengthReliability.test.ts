import {
  cdf,
  type Distribution,
  failureProbability,
  firstToFail,
  leastShares,
  normalInput,
  quantile,
  type ReliabilityModel,
  type seededRandom,
  smallFailureProbability,
  sobolIndices,
} from "@secondline/strength";
import { describe, expect, it } from "vitest";

const normal = (mean: number, deviation: number): Distribution => ({ kind: "normal", mean, deviation });

describe("load–strength interference", () => {
  it("normal strength and load (OpenTURNS benchmark set; documentation of the Python package reliability)", () => {
    expect(failureProbability(normal(4, 1), normal(2, 1))).toBeCloseTo(0.0786496035, 10);
    expect(failureProbability(normal(7, 1), normal(2, 1))).toBeCloseTo(2.03476e-4, 9);
    expect(failureProbability(normal(40, 7), normal(20, 6))).toBeCloseTo(0.0150298, 7);
  });

  it("lognormal strength and normal load: axial beam of the OpenTURNS benchmark set", () => {
    const strength: Distribution = { kind: "lognormal", mean: 3e6, deviation: 3e5 };
    const area = Math.PI * 1e-4;
    const found = failureProbability(strength, normal(750 / area, 50 / area));
    expect(Math.abs(found / 0.0291981946248 - 1)).toBeLessThan(1e-9);
  });

  it("lognormal strength and load agree with quadrature of the closed form's own definition", () => {
    const [strength, load]: [Distribution, Distribution] = [
      { kind: "lognormal", mean: 20, deviation: 3 },
      { kind: "lognormal", mean: 12, deviation: 2 },
    ];
    let sum = 0;
    const steps = 20_000;
    for (let i = 0; i < steps; i++) sum += cdf(strength, quantile(load, (i + 0.5) / steps)) / steps;
    expect(Math.abs(failureProbability(strength, load) / sum - 1)).toBeLessThan(1e-4);
  });
});

describe("first to fail of three independent Weibull strengths (computed by quadrature elsewhere)", () => {
  const strengths = [
    { kind: "weibull", shape: 8, scale: 30 },
    { kind: "weibull", shape: 12, scale: 28 },
    { kind: "weibull", shape: 6, scale: 40 },
  ] as const;

  it("one of them fails at a load of 20 with 0.06973150", () => {
    const holds = strengths.reduce((product, d) => product * (1 - cdf(d, 20)), 1);
    expect(1 - holds).toBeCloseTo(0.0697315, 8);
  });

  it("each is first with 0.34794753, 0.57618415, 0.07586832", () => {
    const shares = leastShares(strengths);
    const published = [0.34794753, 0.57618415, 0.07586832];
    for (const [i, share] of published.entries()) expect(shares[i]).toBeCloseTo(share, 7);
  });
});

describe("sampling agrees with closed forms", () => {
  /** Two lognormal strengths under one normal load. */
  const model = (median: number): ReliabilityModel => ({
    inputs: [normalInput("load", 0, 0.15)],
    parts: [
      { id: "a", name: "a", median, causes: {}, own: 0.12 },
      { id: "b", name: "b", median: 1e9, causes: {}, own: 0.12 },
    ],
    // The load is lognormal: margin ln median + 0.12 u − 0.15 v has a closed form.
    loads: ([logLoad]) => [Math.exp(logLoad!), Math.exp(logLoad!)],
  });
  const closed = (median: number) => failureProbability(normal(Math.log(median), 0.12), normal(0, 0.15));

  it("plain Monte Carlo holds the closed form in its interval", () => {
    const { anyFails, likeliest } = firstToFail(model(1.4), { runs: 40_000, seed: 11 });
    expect(anyFails.low).toBeLessThan(closed(1.4));
    expect(anyFails.high).toBeGreaterThan(closed(1.4));
    expect(likeliest.id).toBe("a");
  });

  it("conditional sampling finds a probability near 1e-6 from some ten thousand runs", () => {
    const median = Math.exp(4.75 * Math.hypot(0.12, 0.15));
    const exact = closed(median);
    expect(exact).toBeGreaterThan(1.0e-6);
    expect(exact).toBeLessThan(1.1e-6);
    const estimates = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((seed) => smallFailureProbability(model(median), { seed }));
    for (const { evaluations, reached } of estimates) {
      expect(reached).toBe(true);
      expect(evaluations).toBeLessThan(15_000);
    }
    // A 95 % interval may miss once or twice in ten.
    expect(estimates.filter(({ low, high }) => low <= exact && exact <= high).length).toBeGreaterThanOrEqual(8);
    const mean = estimates.reduce((sum, { value }) => sum + value, 0) / estimates.length;
    expect(Math.abs(mean / exact - 1)).toBeLessThan(0.25);
  });
});

describe("Sobol indices of the Ishigami function, a = 7, b = 0.1 (closed form; SALib, OpenTURNS)", () => {
  const ishigami = (x: ArrayLike<number>) =>
    Math.sin(x[0]!) + 7 * Math.sin(x[1]!) ** 2 + 0.1 * x[2]! ** 4 * Math.sin(x[0]!);
  const draw = (random: ReturnType<typeof seededRandom>) => [0, 1, 2].map(() => Math.PI * (2 * random.uniform() - 1));
  const indices = sobolIndices(ishigami, draw, ["x1", "x2", "x3"], { rows: 16_384, seed: 5 });

  it.each([
    [0, 0.313905, 0.557589],
    [1, 0.442411, 0.442411],
    [2, 0, 0.243684],
  ])("input %i: first order %d, total %d, within the estimate's own interval and 0.02", (i, first, total) => {
    const index = indices[i]!;
    expect(Math.abs(index.first.value - first)).toBeLessThan(0.02);
    expect(Math.abs(index.total.value - total)).toBeLessThan(0.02);
    expect(index.first.low).toBeLessThan(first + 1e-9);
    expect(index.first.high).toBeGreaterThan(first);
  });

  it("says that the first-order index of x3 cannot be told from zero", () => {
    expect(indices.map((index) => index.distinguishable)).toEqual([true, true, false]);
  });
});
