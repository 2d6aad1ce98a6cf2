import {
  cdf,
  type Distribution,
  failureProbability,
  leastShares,
  normalQuantile,
  quantile,
  seededRandom,
  unionChance,
} from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";

const { check, keeps } = evidence("strengthReliability");

const normal = (mean: number, deviation: number): Distribution => ({ kind: "normal", mean, deviation });

describe("load–strength interference", () => {
  it("normal strength and load (OpenTURNS benchmark set; documentation of the Python package reliability)", () => {
    for (const [source, quantity, got, expected, within] of [
      ["openTurns", "R 4 ± 1, S 2 ± 1", failureProbability(normal(4, 1), normal(2, 1)), 0.0786496035, 5e-11],
      ["openTurns", "R 7 ± 1, S 2 ± 1", failureProbability(normal(7, 1), normal(2, 1)), 2.03476e-4, 5e-10],
      ["reliability", "R 40 ± 7, S 20 ± 6", failureProbability(normal(40, 7), normal(20, 6)), 0.0150298, 5e-8],
    ] as const) {
      const why = "half of the last digit that is printed";
      check({ source, quantity: `chance of failure, ${quantity}`, pairs: [[got, expected]], within, why });
    }
  });

  it("lognormal strength and normal load: axial beam of the OpenTURNS benchmark set", () => {
    const strength: Distribution = { kind: "lognormal", mean: 3e6, deviation: 3e5 };
    const area = Math.PI * 1e-4;
    const found = failureProbability(strength, normal(750 / area, 50 / area));
    check({
      source: "openTurns",
      quantity: "chance of failure of the axial beam",
      pairs: [[found, 0.0291981946248]],
      share: 1e-9,
      why: "quadrature to ten digits",
    });
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
    check({
      source: "quadrature",
      quantity: "chance that one of three Weibull strengths fails at a load of 20",
      pairs: [[1 - holds, 0.0697315]],
      within: 5e-9,
      why: "seven digits are kept",
    });
  });

  it("each is first with 0.34794753, 0.57618415, 0.07586832", () => {
    const shares = leastShares(strengths);
    const computed = [0.34794753, 0.57618415, 0.07586832];
    check({
      source: "quadrature",
      quantity: "share of each of three strengths of being first",
      pairs: computed.map((share, i) => [shares[i]!, share]),
      within: 5e-8,
      why: "eight digits are kept",
    });
  });
});

describe("a union of rare failures", () => {
  it("of two lognormal strengths under one lognormal load agrees with the closed form near 1e-6", () => {
    const median = Math.exp(4.75 * Math.hypot(0.12, 0.15));
    const exact = failureProbability(normal(Math.log(median), 0.12), normal(0, 0.15));
    expect(exact).toBeGreaterThan(1.0e-6);
    expect(exact).toBeLessThan(1.1e-6);
    const [own, load] = [0.12 ** 2, 0.15 ** 2];
    const covariance = [
      [own + load, load],
      [load, own + load],
    ];
    const { each, any } = unionChance({ means: [Math.log(median), 20], covariance }, seededRandom(11), 1000);
    expect(Math.abs(each[0]! / exact - 1)).toBeLessThan(1e-9);
    expect(Math.abs(any / exact - 1)).toBeLessThan(1e-9);
  });

  it("of independent ones agrees with the product of what holds", () => {
    const chances = [1e-6, 2e-6, 5e-7];
    const means = chances.map((chance) => -normalQuantile(chance));
    const covariance = means.map((_, i) => means.map((__, j) => (i === j ? 1 : 0)));
    const { any } = unionChance({ means, covariance }, seededRandom(2), 20_000);
    const exact = -Math.expm1(chances.reduce((sum, chance) => sum + Math.log1p(-chance), 0));
    expect(Math.abs(any / exact - 1)).toBeLessThan(0.02);
  });
});

keeps();
