import {
  andersonDarling,
  batchesPoolable,
  criticalResidual,
  distributionMean,
  exactly,
  type Fit,
  fitFamily,
  lognormalLowerBound,
  maximumNormedResidual,
  mean,
  normalLowerBound,
  type Observation,
  profileInterval,
  profileLowerBound,
  standardDeviation,
  waldInterval,
  weibullParameters,
} from "@secondline/strength";
import { describe, expect, it } from "vitest";

function fitted(...args: Parameters<typeof fitFamily>): Fit {
  const fit = fitFamily(...args);
  if (!fit.ok) throw new Error(fit.reason);
  return fit;
}

describe("18 strengths of the validation vignette of the R package cmstatr, after CMH-17-1G", () => {
  const strengths = [
    137.4438, 139.5395, 150.89, 141.4474, 141.8203, 151.8821, 143.9245, 132.9732, 136.6419, 138.1723, 148.7668, 143.283,
    143.5429, 141.7023, 137.4732, 152.338, 144.1589, 128.5218,
  ];

  it("mean 141.917883 and standard deviation 6.397878", () => {
    expect(mean(strengths)).toBeCloseTo(141.917883, 6);
    expect(standardDeviation(strengths)).toBeCloseTo(6.397878, 6);
  });

  it("90/95 and 99/95 lower bounds, normal and lognormal; published ones differ in the last two digits", () => {
    // Recomputed values, rounded: agreement to their last digit.
    const off = (got: number | undefined, expected: number) => Math.abs(got! - expected);
    expect(off(normalLowerBound(strengths, 0.9, 0.95), 129.29)).toBeLessThan(0.001);
    expect(off(normalLowerBound(strengths, 0.99, 0.95), 120.355)).toBeLessThan(0.001);
    expect(off(lognormalLowerBound(strengths, 0.9, 0.95), 129.667)).toBeLessThan(0.001);
    expect(off(lognormalLowerBound(strengths, 0.99, 0.95), 121.727)).toBeLessThan(0.001);
  });

  it("maximum normed residual 2.0938 below the critical 2.652: nothing is pointed out", () => {
    const test = maximumNormedResidual(strengths)!;
    expect(test.residual).toBeCloseTo(2.0938, 4);
    expect(test.critical).toBeCloseTo(2.652, 3);
    expect(test.index).toBeUndefined();
  });

  it("Anderson–Darling significance of the normal distribution 0.465", () => {
    const shape = { location: mean(strengths), logScale: Math.log(standardDeviation(strengths)!) };
    expect(andersonDarling(strengths, "normal", shape).significance).toBeCloseTo(0.465, 3);
  });
});

describe("right-censored lives of NIST/SEMATECH e-Handbook 8.4.1.3", () => {
  const lives: Observation[] = [
    ...exactly([54, 187, 216, 240, 244, 335, 361, 373, 375, 386]),
    ...Array.from({ length: 10 }, () => ({ kind: "above", value: 500 }) as const),
  ];

  it("Weibull scale 606.528, shape 1.7208, mean 540.737, log-likelihood −75.135 (its sign is lost on the page), AIC 154.27", () => {
    const fit = fitted(lives, "weibull");
    const { scale, shape } = weibullParameters(fit);
    expect(scale).toBeCloseTo(606.528, 2);
    expect(shape).toBeCloseTo(1.7208, 4);
    expect(distributionMean({ kind: "weibull", shape, scale })).toBeCloseTo(540.737, 2);
    expect(fit.logLikelihood).toBeCloseTo(-75.135, 3);
    expect(fit.aic).toBeCloseTo(154.27, 2);
  });

  it("lognormal location 6.22602, scale 0.90891, AIC 154.39", () => {
    const fit = fitted(lives, "lognormal");
    expect(fit.location).toBeCloseTo(6.22602, 4);
    expect(Math.exp(fit.logScale)).toBeCloseTo(0.90891, 4);
    expect(fit.aic).toBeCloseTo(154.39, 2);
  });
});

describe("complete sample of 30, documentation of the Python package reliability", () => {
  const values = [
    58, 75, 36, 52, 63, 65, 22, 17, 28, 64, 23, 40, 73, 45, 52, 36, 52, 60, 13, 55, 82, 55, 34, 57, 23, 42, 66, 35, 34,
    25,
  ];
  const fit = fitted(exactly(values), "weibull");

  it("Weibull scale 51.858, shape 2.80086, log-likelihood −129.063, AICc 262.57", () => {
    const { scale, shape } = weibullParameters(fit);
    expect(scale).toBeCloseTo(51.858, 3);
    expect(shape).toBeCloseTo(2.80086, 4);
    expect(fit.logLikelihood).toBeCloseTo(-129.063, 3);
    expect(fit.aicc).toBeCloseTo(262.57, 2);
  });

  it("Wald intervals on the log scale [45.336, 59.318] and [2.096, 3.742]", () => {
    const scale = waldInterval(fit, "location", 0.95).map(Math.exp);
    const shape = waldInterval(fit, "logScale", 0.95).map((x) => Math.exp(-x));
    expect(scale[0]).toBeCloseTo(45.336, 2);
    expect(scale[1]).toBeCloseTo(59.318, 2);
    expect(shape[1]).toBeCloseTo(2.096, 2);
    expect(shape[0]).toBeCloseTo(3.742, 2);
  });

  it("profile-likelihood intervals hold the estimate and lie near the Wald ones", () => {
    const [low, high] = profileInterval(exactly(values), fit, { kind: "quantile", p: 1 - Math.exp(-1) }, 0.95);
    expect(low).toBeGreaterThan(44.5);
    expect(low).toBeLessThan(46);
    expect(high).toBeGreaterThan(58.5);
    expect(high).toBeLessThan(60);
    expect(profileLowerBound(exactly(values), fit, 0.05, 0.95)).toBeLessThan(17.95);
  });
});

describe("outliers, CMH-17-1G batch 3", () => {
  it("points out 80.23: maximum normed residual 2.1192 above the critical 2.0200", () => {
    const values = [107.676986, 108.960241, 116.12264, 80.2334815, 106.14557, 104.667866, 104.234953];
    const test = maximumNormedResidual(values)!;
    expect(test.residual).toBeCloseTo(2.1192, 4);
    expect(test.critical).toBeCloseTo(2.02, 3);
    expect(values[test.index!]).toBe(80.2334815);
  });

  it("critical values for n = 3 to 10", () => {
    const published = [1.154, 1.481, 1.715, 1.887, 2.02, 2.127, 2.215, 2.29];
    published.forEach((critical, i) => {
      expect(Math.abs(criticalResidual(i + 3) - critical)).toBeLessThan(0.0011);
    });
  });
});

describe("batches, Scholz & Stephens 1987, smoothness of paper from four laboratories (data and result from memory)", () => {
  const laboratories = [
    [38.7, 41.5, 43.8, 44.5, 45.5, 46.0, 47.7, 58.0],
    [39.2, 39.3, 39.7, 41.4, 41.8, 42.9, 43.3, 45.8],
    [34.0, 35.0, 39.0, 40.0, 43.0, 43.0, 44.0, 45.0],
    [34.0, 34.8, 34.8, 35.4, 37.2, 37.8, 41.2, 42.8],
  ];
  it("mid-rank statistic 4.480 above the 5 % critical value: not one population", () => {
    const test = batchesPoolable(laboratories);
    expect(test.statistic).toBeCloseTo(4.48, 3);
    expect(test.poolable).toBe(false);
  });
});
