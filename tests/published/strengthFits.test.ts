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
} from "@secondline/statistics";
import { characteristicValue } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";

const { check, keeps } = evidence("strengthFits");
const PRINTED = "half of the last digit that is printed";
const SAMPLE = "complete sample of 30";

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
    const why = "rounded to six digits after the point";
    const deviation = standardDeviation(strengths)!;
    check({ source: "cmstatr", quantity: "mean", pairs: [[mean(strengths), 141.917883]], within: 5e-7, why });
    check({ source: "cmstatr", quantity: "standard deviation", pairs: [[deviation, 6.397878]], within: 5e-7, why });
  });

  it("B and A basis values (90/95 and 99/95) as printed: normal 129.287 and 120.336, lognormal 129.664 and 121.710", () => {
    const why = "the handbook's factors are approximations: up to 2e-5 of the B and 2e-4 of the A basis values";
    for (const [quantity, got, expected, share] of [
      ["normal B basis value", normalLowerBound(strengths, 0.9, 0.95)!, 129.287, 3e-5],
      ["normal A basis value", normalLowerBound(strengths, 0.99, 0.95)!, 120.336, 2e-4],
      ["lognormal B basis value", lognormalLowerBound(strengths, 0.9, 0.95)!, 129.664, 3e-5],
      ["lognormal A basis value", lognormalLowerBound(strengths, 0.99, 0.95)!, 121.71, 2e-4],
    ] as const)
      check({ source: "cmstatr", quantity, pairs: [[got, expected]], share, why });
  });

  it("the same with exact factors (computed with scipy, not printed): 129.290, 120.355, 129.667, 121.727", () => {
    const why = "six digits were noted";
    for (const [quantity, got, expected] of [
      ["normal B basis value, exact", normalLowerBound(strengths, 0.9, 0.95)!, 129.29],
      ["normal A basis value, exact", normalLowerBound(strengths, 0.99, 0.95)!, 120.355],
      ["lognormal B basis value, exact", lognormalLowerBound(strengths, 0.9, 0.95)!, 129.667],
      ["lognormal A basis value, exact", lognormalLowerBound(strengths, 0.99, 0.95)!, 121.727],
    ] as const)
      check({ source: "scipy", quantity, pairs: [[got, expected]], share: 5e-6, why });
  });

  it("the value that the program prints for 90/95 lies at the normal bound or lower, for a Weibull population is not ruled out", () => {
    const { value, method } = characteristicValue(exactly(strengths), 0.95, { content: 0.9 });
    expect(value).toBeLessThanOrEqual(129.29);
    expect(value).toBeGreaterThan(0.95 * 129.29);
    expect(method).toContain("n = 18");
  });

  it("maximum normed residual 2.0938 below the critical 2.652: nothing is pointed out", () => {
    const test = maximumNormedResidual(strengths)!;
    const [residual, critical] = [[[test.residual, 2.0938]], [[test.critical, 2.652]]] as const;
    check({ source: "cmstatr", quantity: "maximum normed residual", pairs: residual, within: 5e-5, why: PRINTED });
    check({ source: "cmstatr", quantity: "its critical value, n = 18", pairs: critical, within: 5e-4, why: PRINTED });
    expect(test.index).toBeUndefined();
  });

  it("Anderson–Darling significance of the normal distribution 0.465", () => {
    const shape = { location: mean(strengths), logScale: Math.log(standardDeviation(strengths)!) };
    check({
      source: "cmstatr",
      quantity: "Anderson–Darling significance of the normal distribution",
      pairs: [[andersonDarling(strengths, "normal", shape).significance, 0.465]],
      within: 5e-4,
      why: PRINTED,
    });
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
    for (const [quantity, got, expected, within] of [
      ["Weibull scale", scale, 606.528, 5e-3],
      ["Weibull shape", shape, 1.7208, 5e-5],
      ["mean of the Weibull fit", distributionMean({ kind: "weibull", shape, scale }), 540.737, 5e-3],
      ["log-likelihood of the Weibull fit", fit.logLikelihood, -75.135, 5e-4],
      ["AIC of the Weibull fit", fit.aic, 154.27, 5e-3],
    ] as const)
      check({ source: "nistLives", quantity, pairs: [[got, expected]], within, why: PRINTED });
  });

  it("lognormal location 6.22602, scale 0.90891, AIC 154.39", () => {
    const fit = fitted(lives, "lognormal");
    for (const [quantity, got, expected, within] of [
      ["lognormal location", fit.location, 6.22602, 5e-5],
      ["lognormal scale", Math.exp(fit.logScale), 0.90891, 5e-5],
      ["AIC of the lognormal fit", fit.aic, 154.39, 5e-3],
    ] as const)
      check({ source: "nistLives", quantity, pairs: [[got, expected]], within, why: PRINTED });
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
    for (const [quantity, got, expected, within] of [
      ["Weibull scale", scale, 51.858, 5e-4],
      ["Weibull shape", shape, 2.80086, 5e-5],
      ["log-likelihood", fit.logLikelihood, -129.063, 5e-4],
      ["AICc", fit.aicc!, 262.57, 5e-3],
    ] as const)
      check({ source: "reliability", where: SAMPLE, quantity, pairs: [[got, expected]], within, why: PRINTED });
  });

  it("Wald intervals on the log scale [45.336, 59.318] and [2.096, 3.742]", () => {
    const scale = waldInterval(fit, "location", 0.95).map(Math.exp);
    const shape = waldInterval(fit, "logScale", 0.95).map((x) => Math.exp(-x));
    for (const [quantity, got, expected] of [
      ["lower end of the scale's 95 % interval", scale[0], 45.336],
      ["upper end of the scale's 95 % interval", scale[1], 59.318],
      ["lower end of the shape's 95 % interval", shape[1], 2.096],
      ["upper end of the shape's 95 % interval", shape[0], 3.742],
    ] as const) {
      const why = "two optimisers stop a little apart";
      check({ source: "reliability", where: SAMPLE, quantity, pairs: [[got!, expected]], within: 5e-3, why });
    }
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

describe("a log with breaking loads, intervals, survivors and one result known from above only", () => {
  // Computed with scipy 1.17 by maximising the same likelihood with Nelder–Mead to 1e-11; nothing published is known to us.
  const log: Observation[] = [
    ...exactly([10.4, 9.9, 11.1, 10.7]),
    { kind: "between", from: 9, to: 10.5 },
    { kind: "between", from: 10.5, to: 11 },
    { kind: "between", from: 9.5, to: 10 },
    { kind: "between", from: 8.5, to: 9.5 },
    { kind: "above", value: 10 },
    { kind: "above", value: 11.2 },
    { kind: "below", value: 12 },
  ];
  const why = "two optimisers stop a little apart";

  it.each([
    ["normal", 10.40289556, 0.7043528, -11.56497903],
    ["lognormal", 2.3403055, 0.06859432, -11.58381799],
    ["weibull", 2.37036716, 0.05739805, -11.70480117],
  ] as const)("%s: location, scale and log-likelihood (computed)", (family, location, scale, likelihood) => {
    const fit = fitted(log, family);
    for (const [quantity, got, expected, share] of [
      ["location", fit.location, location, 1e-5],
      ["scale", Math.exp(fit.logScale), scale, 1e-5],
      ["log-likelihood", fit.logLikelihood, likelihood, 1e-8],
    ] as const)
      check({ source: "scipy", quantity: `${family} fit: ${quantity}`, pairs: [[got, expected]], share, why });
  });

  it("ten intervals and no breaking load: mean 22.818482, scale 1.429295 (computed)", () => {
    const ends = [20, 21, 21, 22, 22, 22, 23, 23, 24, 25];
    const intervals = ends.map((from): Observation => ({ kind: "between", from, to: from === 25 ? 27 : from + 1 }));
    const fit = fitted(intervals, "normal");
    const [middle, scale] = [[[fit.location, 22.818481525]], [[Math.exp(fit.logScale), 1.429294844]]] as const;
    check({ source: "scipy", quantity: "mean of ten intervals", pairs: middle, share: 1e-5, why });
    check({ source: "scipy", quantity: "scale of ten intervals", pairs: scale, share: 1e-5, why });
  });
});

describe("outliers, CMH-17-1G batch 3", () => {
  it("points out 80.23: maximum normed residual 2.1192 above the critical 2.0200", () => {
    const values = [107.676986, 108.960241, 116.12264, 80.2334815, 106.14557, 104.667866, 104.234953];
    const test = maximumNormedResidual(values)!;
    const [residual, critical] = [[[test.residual, 2.1192]], [[test.critical, 2.02]]] as const;
    const where = "CMH-17-1G batch 3";
    check({ source: "cmstatr", where, quantity: "residual of 80.23", pairs: residual, within: 5e-5, why: PRINTED });
    check({ source: "cmstatr", where, quantity: "critical value, n = 7", pairs: critical, within: 5e-4, why: PRINTED });
    expect(values[test.index!]).toBe(80.2334815);
  });

  it("critical values for n = 3 to 10", () => {
    const published = [1.154, 1.481, 1.715, 1.887, 2.02, 2.127, 2.215, 2.29];
    check({
      source: "cmstatr",
      where: "table of critical values",
      quantity: "critical values of the maximum normed residual, n = 3 to 10",
      pairs: published.map((critical, i) => [criticalResidual(i + 3), critical]),
      within: 0.0011,
      why: "the table's last digit is truncated here and there",
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
    const pairs = [[test.statistic, 4.48]] as const;
    check({ source: "scholz", quantity: "mid-rank statistic", pairs, within: 5e-4, why: PRINTED });
    expect(test.poolable).toBe(false);
  });
});

keeps();
