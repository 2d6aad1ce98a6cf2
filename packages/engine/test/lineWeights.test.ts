import { describe, expect, it } from "vitest";
import { coordinateAt, makeWeights, WEIGHTED_NODES, weighLine } from "../src/line/lineWeights.ts";

/** Weights at a coordinate as one entry per node of a line of so many nodes, with their derivatives. */
function weightsAt(xi: number, nodes: number, low = 0, high = nodes - 1) {
  const weights = makeWeights();
  weights.xi = xi;
  weighLine(weights, low, high);
  const spread = (by: Float64Array) => {
    const all = new Array<number>(nodes).fill(0);
    for (let k = 0; k < WEIGHTED_NODES; k++) if (by[k] !== 0) all[weights.node + k] = by[k]!;
    return all;
  };
  return { w: spread(weights.w), d: spread(weights.d), b: spread(weights.b) };
}
const NODES = 12;
const places = Array.from({ length: 111 }, (_, k) => 0.1 * k);

describe("the curve that the ring touches", () => {
  it("is the line itself where that is straight and evenly divided", () => {
    for (const xi of places) {
      const { w, d, b } = weightsAt(xi, NODES);
      expect(w.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
      expect(w.reduce((sum, one, i) => sum + i * one, 0)).toBeCloseTo(xi, 12);
      expect(d.reduce((sum, one, i) => sum + i * one, 0)).toBeCloseTo(1, 12);
      expect(b.reduce((sum, one, i) => sum + i * one, 0)).toBeCloseTo(0, 12);
    }
  });

  it("ends in the end nodes, also those of a piece of the line", () => {
    expect(weightsAt(0, NODES).w[0]).toBeCloseTo(1, 12);
    expect(weightsAt(NODES - 1, NODES).w[NODES - 1]).toBeCloseTo(1, 12);
    expect(weightsAt(4, NODES, 4, 6).w[4]).toBeCloseTo(1, 12);
    for (const xi of [4, 4.3, 5, 5.9, 6]) {
      const outside = weightsAt(xi, NODES, 4, 6).w.filter((one, i) => (i < 4 || i > 6) && one !== 0);
      expect(outside).toEqual([]);
    }
  });

  it("and its derivatives run without a jump", () => {
    for (const xi of places.slice(1)) {
      const [before, after] = [weightsAt(xi - 1e-7, NODES), weightsAt(Math.min(xi + 1e-7, 11), NODES)];
      for (const by of ["w", "d", "b"] as const) {
        for (let i = 0; i < NODES; i++) expect(Math.abs(after[by][i]! - before[by][i]!)).toBeLessThan(2e-6);
      }
    }
    const step = 1e-5;
    for (const xi of [0.4, 1.7, 5.2, 10.6]) {
      const [less, here, more] = [xi - step, xi, xi + step].map((at) => weightsAt(at, NODES));
      for (let i = 0; i < NODES; i++) {
        expect((more!.w[i]! - less!.w[i]!) / (2 * step)).toBeCloseTo(here!.d[i]!, 7);
        expect((more!.d[i]! - less!.d[i]!) / (2 * step)).toBeCloseTo(here!.b[i]!, 7);
      }
    }
  });

  it("bends the line under the ring as a point load does, whatever the tension: Σ wᵢwⱼ|i − j| vanishes on average", () => {
    const sums = places
      .filter((xi) => xi >= 4 && xi < 5)
      .map((xi) => {
        const { w } = weightsAt(xi, NODES);
        return w.reduce(
          (sum, one, i) => sum + w.reduce((part, other, j) => part + one * other * Math.abs(i - j), 0),
          0,
        );
      });
    expect(Math.abs(sums.reduce((sum, one) => sum + one, 0) / sums.length)).toBeLessThan(1e-5);
    // What is left between nodes, and would make the ring cog.
    for (const sum of sums) expect(Math.abs(sum)).toBeLessThan(0.05);
  });

  it("has a coordinate for every place, also beside elements of another length", () => {
    const fractions = Float64Array.from([0, 0.02, 0.12, 0.22, 0.32, 0.42, 0.52, 0.62, 0.8, 1]);
    for (const place of [0, 0.02, 0.05, 0.32, 0.7, 0.99, 1]) {
      const { w } = weightsAt(coordinateAt(fractions, place), fractions.length);
      expect(w.reduce((sum, one, i) => sum + one * fractions[i]!, 0)).toBeCloseTo(place, 9);
    }
  });
});
