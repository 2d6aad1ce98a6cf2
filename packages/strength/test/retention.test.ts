import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lowerPrediction, type NormalInverseGamma, predict, retention, updateRegression, VAGUE } from "../src/index.ts";

const POLYESTER = { kind: "sun", fibre: "polyester" } as const;

describe("retention over time", () => {
  it("without tests the posterior is the published curve", () => {
    const none = retention(POLYESTER, 30_000, []);
    expect(none.posterior(12, 0.95)).toEqual(none.prior(12, 0.95));
    expect(none.prior(12, 0.95).central).toBeCloseTo(30_000 * (1 - 0.3 * (1 - Math.exp(-2.5))), 6);
    expect(none.tests(12, 0.95)).toBeUndefined();
  });

  it("two bad tests pull the posterior between themselves and the published curve", () => {
    const bad = retention(POLYESTER, 30_000, [
      { dose: 12, strength: 15_000 },
      { dose: 12, strength: 15_500 },
    ]);
    const { central } = bad.posterior(12, 0.95);
    expect(central).toBeGreaterThan(15_500);
    expect(central).toBeLessThan(bad.prior(12, 0.95).central);
    expect(bad.slope.posterior).toBeGreaterThan(1);
  });

  it("many tests outweigh the published curve and narrow the bound", () => {
    const many = Array.from({ length: 40 }, (_, i) => {
      const dose = (i % 10) * 2;
      return { dose, strength: 28_000 * Math.exp(-0.03 * dose) * (1 + 0.02 * Math.sin(i)) };
    });
    const found = retention(POLYESTER, 30_000, many);
    const [tests, posterior] = [found.tests(10, 0.95)!, found.posterior(10, 0.95)];
    expect(Math.abs(posterior.central / tests.central - 1)).toBeLessThan(0.02);
    expect(posterior.lower / posterior.central).toBeGreaterThan(
      found.prior(10, 0.95).lower / found.prior(10, 0.95).central,
    );
  });

  it("refuses to speak beyond the published range", () => {
    const none = retention(POLYESTER, 30_000, []);
    expect(() => none.posterior(none.validTo + 1, 0.95)).toThrow(/outside 0 to 36/);
    expect(() => retention({ kind: "falls" }, 30_000, [{ dose: 1000, strength: 9000 }])).toThrow(RangeError);
  });

  it("learns the same from tests one by one as from all at once", () => {
    const point = fc.record({
      x: fc.double({ min: -5, max: 5, noNaN: true }),
      y: fc.double({ min: -5, max: 5, noNaN: true }),
    });
    const prior: NormalInverseGamma = { mean: [1, 0.5], precision: [2, 0.1, 1], a: 2, b: 0.5 };
    fc.assert(
      fc.property(fc.array(point, { minLength: 1, maxLength: 8 }), (points) => {
        const together = predict(updateRegression(prior, points), 0.7)!;
        const oneByOne = predict(
          points.reduce((state, p) => updateRegression(state, [p]), prior),
          0.7,
        )!;
        expect(oneByOne.centre).toBeCloseTo(together.centre, 9);
        expect(oneByOne.scale).toBeCloseTo(together.scale, 9);
        expect(oneByOne.freedom).toBe(together.freedom);
      }),
      { seed: 3, numRuns: 50 },
    );
  });

  it("without a prior it is ordinary least squares, and silent below three points", () => {
    const points = [0, 1, 2, 3].map((x) => ({ x, y: 2 + 3 * x + (x % 2) }));
    const found = predict(updateRegression(VAGUE, points), 1.5)!;
    expect(found.centre).toBeCloseTo(7, 12);
    expect(found.freedom).toBe(2);
    // Residual sum 0.8, two degrees of freedom, mean of x predicted: √(0.4·(1 + 1/4)).
    expect(found.scale).toBeCloseTo(Math.sqrt(0.4 * 1.25), 12);
    expect(lowerPrediction(found, 0.95)).toBeCloseTo(7 - 2.919986 * found.scale, 5);
    expect(predict(updateRegression(VAGUE, points.slice(0, 2)), 1)).toBeUndefined();
  });
});
