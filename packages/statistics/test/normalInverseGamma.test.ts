import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lowerPrediction, type NormalInverseGamma, predict, updateRegression, VAGUE_PRIOR } from "../src/index.ts";

describe("a line through points, with a prior", () => {
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
    const found = predict(updateRegression(VAGUE_PRIOR, points), 1.5)!;
    expect(found.centre).toBeCloseTo(7, 12);
    expect(found.freedom).toBe(2);
    // Residual sum 0.8, two degrees of freedom, mean of x predicted: √(0.4·(1 + 1/4)).
    expect(found.scale).toBeCloseTo(Math.sqrt(0.4 * 1.25), 12);
    expect(lowerPrediction(found, 0.95)).toBeCloseTo(7 - 2.919986 * found.scale, 5);
    expect(predict(updateRegression(VAGUE_PRIOR, points.slice(0, 2)), 1)).toBeUndefined();
  });
});
