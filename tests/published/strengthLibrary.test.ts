import {
  cdf,
  clopperPearson,
  en1990Factor,
  quantile,
  seededRandom,
  toleranceFactor,
  toleranceFactorKnownSpread,
} from "@secondline/statistics";
import { jStat } from "jstat";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";

const { check, keeps } = evidence("strengthLibrary");

/** Two implementations of one function agree to this share over a list of pairs. */
const agree = (quantity: string, share: number, pairs: readonly (readonly [number, number])[]) =>
  check({ source: "jstat", quantity, pairs, share, why: "two series, two ways to their end" });

describe("our special functions against jstat 1.9.6, an independent implementation", () => {
  const shares = [1e-6, 0.001, 0.05, 0.3, 0.5, 0.75, 0.95, 0.999];

  it("normal quantile to 1e-9", () => {
    // A known spread and endless tests leave the bare quantile.
    const pairs = [0.9, 0.95, 0.99, 0.999].map(
      (p) => [toleranceFactorKnownSpread(1e15, p, 0.5), jStat.normal.inv(p, 0, 1)] as const,
    );
    agree("normal quantile", 1e-9, pairs);
  });

  it("Student quantile, through k_n of EN 1990, to 1e-7", () => {
    const n = [2, 3, 5, 10, 30, 100];
    const pairs = n.map(
      (k) => [en1990Factor(k, false), jStat.studentt.inv(0.95, k - 1) * Math.sqrt(1 + 1 / k)] as const,
    );
    agree("Student quantile, n = 2 to 100", 1e-7, pairs);
  });

  it("beta quantile, through Clopper–Pearson, to 1e-7", () => {
    const counts: readonly (readonly [hits: number, trials: number])[] = [
      [1, 10],
      [5, 10],
      [29, 30],
      [3, 200],
    ];
    const pairs = counts.flatMap(([k, n]) => {
      const [low, high] = clopperPearson(k, n, 0.95);
      return [
        [low, jStat.beta.inv(0.025, k, n - k + 1)],
        [high, jStat.beta.inv(0.975, k + 1, n - k)],
      ] as const;
    });
    agree("beta quantile, through Clopper–Pearson", 1e-7, pairs);
  });

  it("non-central t: jstat's distribution function returns the confidence at our factor, to 1e-6", () => {
    const z = jStat.normal.inv(0.95, 0, 1);
    const pairs = [2, 3, 5, 10, 30, 100].flatMap((n) =>
      [0.75, 0.95, 0.99].map((confidence) => {
        const t = toleranceFactor(n, 0.95, confidence) * Math.sqrt(n);
        return [jStat.noncentralt.cdf(t, n - 1, z * Math.sqrt(n)), confidence] as const;
      }),
    );
    const why = "its distribution function is summed to about as much";
    check({ source: "jstat", quantity: "confidence at our factor, n = 2 to 100", pairs, within: 1e-6, why });
  });

  it("Weibull and lognormal distribution functions invert their quantiles", () => {
    for (const d of [
      { kind: "weibull", shape: 8, scale: 30 },
      { kind: "lognormal", mean: 20, deviation: 4 },
    ] as const) {
      for (const p of shares) expect(Math.abs(cdf(d, quantile(d, p)) / p - 1)).toBeLessThan(1e-9);
    }
  });

  it("normal deviates have the moments they should", () => {
    const random = seededRandom(1);
    const deviates = Array.from({ length: 100_000 }, () => random.normal());
    const moment = (k: number) => deviates.reduce((sum, x) => sum + x ** k, 0) / deviates.length;
    // Five standard errors of each moment.
    expect(Math.abs(moment(1))).toBeLessThan(5 / Math.sqrt(1e5));
    expect(Math.abs(moment(2) - 1)).toBeLessThan(5 * Math.sqrt(2 / 1e5));
    expect(Math.abs(moment(4) - 3)).toBeLessThan(5 * Math.sqrt(96 / 1e5));
  });
});

keeps();
