import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BreakTest,
  lowerPrediction,
  type NormalInverseGamma,
  predict,
  stockRetention,
  updateRegression,
  VAGUE,
} from "../src/index.ts";
import { polyesterWebbing } from "./exampleRig.ts";

const test = (sunMonths: number, value: number): BreakTest => ({
  part: "webbing",
  material: "pes",
  state: sunMonths === 0 ? "new" : "used",
  wet: false,
  outcome: "broke",
  result: { kind: "exact", value },
  sunMonths,
});

describe("retention over time", () => {
  it("two bad tests pull the curve between themselves and the built-in one, where they reach", () => {
    const { sun } = stockRetention(polyesterWebbing, [test(12, 15_000), test(12, 15_500)]);
    const { central } = sun!.posterior(12, 0.95);
    expect(central).toBeGreaterThan(15_000);
    expect(central).toBeLessThan(sun!.prior(12, 0.95).central);
    expect(sun!.slope.posterior).toBeGreaterThan(1);
  });

  it("many tests outweigh the built-in curve and narrow the bound", () => {
    const many = Array.from({ length: 40 }, (_, i) => {
      const dose = (i % 10) * 2;
      return test(dose, 28_000 * Math.exp(-0.03 * dose) * (1 + 0.02 * Math.sin(i)));
    });
    const found = stockRetention(polyesterWebbing, many).sun!;
    const posterior = found.posterior(10, 0.95);
    expect(Math.abs(posterior.central / (28_000 * Math.exp(-0.3)) - 1)).toBeLessThan(0.03);
    expect(posterior.lower / posterior.central).toBeGreaterThan(
      found.prior(10, 0.95).lower / found.prior(10, 0.95).central,
    );
    expect(found.tests(10, 0.95)!.central).toBeGreaterThan(0);
  });

  it("refuses to speak beyond the built-in range", () => {
    const { sun } = stockRetention(polyesterWebbing, [test(12, 20_000)]);
    expect(() => sun!.posterior(sun!.validTo + 1, 0.95)).toThrow(/outside 0 to 36/);
    expect(stockRetention(polyesterWebbing, [test(0, 30_000)])).toEqual({});
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
