import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plotGrid, samplesAround, valuesOn } from "../src/time/plotGrid.ts";
import { buildPyramid, extremes } from "../src/time/pyramid.ts";
import { dataRows, rangeStatistics } from "../src/time/statistics.ts";

const seeded = { seed: 4, numRuns: 400 };
const signal = fc.array(fc.float({ noNaN: true, noDefaultInfinity: true }), { minLength: 1, maxLength: 700 });
/** A signal and a part of it, in samples. */
const signalAndRange = signal.chain((values) =>
  fc.tuple(
    fc.constant(Float32Array.from(values)),
    fc.nat({ max: values.length }),
    fc.nat({ max: values.length }),
    fc.integer({ min: 1, max: 60 }),
  ),
);
const greatest = (values: Iterable<number>) => [...values].reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
const least = (values: Iterable<number>) => [...values].reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);

describe("min/max pyramid", () => {
  it("gives the exact extremes of every range, and their first places", () => {
    fc.assert(
      fc.property(signalAndRange, ([samples, a, b]) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const { minAt, maxAt } = extremes(buildPyramid(samples), from, to);
        const range = samples.slice(from, to);
        if (range.length === 0) {
          expect([minAt, maxAt]).toEqual([-1, -1]);
          return;
        }
        expect(maxAt).toBe(from + range.indexOf(greatest(range)));
        expect(minAt).toBe(from + range.indexOf(least(range)));
      }),
      seeded,
    );
  });

  it("is not blinded by a NaN", () => {
    const samples = Float32Array.from({ length: 100 }, (_, i) => (i % 8 === 0 ? Number.NaN : i));
    expect(extremes(buildPyramid(samples), 0, 100)).toEqual({ minAt: 1, maxAt: 99 });
    expect(extremes(buildPyramid(samples), 8, 9)).toEqual({ minAt: -1, maxAt: -1 });
  });

  it("takes an empty signal", () => {
    expect(extremes(buildPyramid(new Float32Array()), 0, 10)).toEqual({ minAt: -1, maxAt: -1 });
  });
});

describe("what is drawn", () => {
  it("keeps the exact maximum and minimum of the visible range at every zoom", () => {
    fc.assert(
      fc.property(signalAndRange, ([samples, a, b, columns]) => {
        const rate = 10;
        const range = { from: Math.min(a, b) / rate, to: Math.max(a, b) / rate };
        const grid = plotGrid(rate, samples.length, range, columns);
        const drawn = valuesOn(grid, buildPyramid(samples), rate).filter((v) => v !== null);
        const { first, end } = samplesAround(rate, samples.length, range);
        const visible = samples.slice(first, end);
        expect(greatest(drawn)).toBe(greatest(visible));
        expect(least(drawn)).toBe(least(visible));
      }),
      seeded,
    );
  });

  it("draws times that only grow, and never more than a few points for a column", () => {
    fc.assert(
      fc.property(signalAndRange, ([samples, a, b, columns]) => {
        const range = { from: Math.min(a, b) / 10, to: Math.max(a, b) / 10 };
        const { times } = plotGrid(10, samples.length, range, columns);
        expect(times.length).toBeLessThanOrEqual(Math.max(3 * columns, 2 * columns));
        for (let i = 1; i < times.length; i++) expect(times[i]!).toBeGreaterThan(times[i - 1]!);
      }),
      seeded,
    );
  });

  it("shows the samples themselves when zoomed in, one beyond either edge", () => {
    const samples = Float32Array.from({ length: 1000 }, (_, i) => i * i);
    const grid = plotGrid(1000, 1000, { from: 0.1004, to: 0.1046 }, 100);
    expect(grid.exact).toBe(true);
    expect([...grid.edges]).toEqual([100, 101, 102, 103, 104, 105]);
    expect(valuesOn(grid, buildPyramid(samples), 1000)).toEqual([...samples.slice(100, 106)]);
  });

  it("ends a shorter run's trace where that run ended", () => {
    const short = buildPyramid(new Float32Array(500).fill(7));
    const values = valuesOn(plotGrid(1000, 1000, { from: 0, to: 1 }, 10), short, 1000);
    expect(values.slice(0, 10)).toEqual(new Array(10).fill(7));
    expect(values.slice(10)).toEqual(new Array(10).fill(null));
  });

  it("draws a run of another rate at the same times", () => {
    const slow = buildPyramid(Float32Array.from({ length: 200 }, (_, i) => (i === 50 ? 9 : 1)));
    const values = valuesOn(plotGrid(1000, 2000, { from: 0, to: 1.999 }, 20), slow, 100);
    const peak = values.indexOf(9);
    expect(Math.floor(peak / 2)).toBe(5);
  });
});

describe("statistics of a range", () => {
  it("are those of the samples within it", () => {
    const samples = Float32Array.from({ length: 100 }, (_, i) => (i === 42 ? 500 : i === 17 ? -3 : 10));
    const found = rangeStatistics(buildPyramid(samples), 100, { from: 0.1, to: 0.5 });
    expect(found).toMatchObject({ max: 500, maxTime: 0.42, min: -3, minTime: 0.17 });
    expect(found?.mean).toBeCloseTo((39 * 10 + 500 - 3) / 41, 9);
  });

  it("are absent where there is no sample", () => {
    const pyramid = buildPyramid(new Float32Array(100));
    expect(rangeStatistics(pyramid, 100, { from: 2, to: 3 })).toBeNull();
    expect(rangeStatistics(pyramid, 100, { from: 0.101, to: 0.109 })).toBeNull();
  });

  it("stand in the data table without losing a peak", () => {
    fc.assert(
      fc.property(signalAndRange, ([samples, , , limit]) => {
        const rows = dataRows([buildPyramid(samples)], 10, { from: 0, to: samples.length / 10 }, limit);
        expect(rows.length).toBe(Math.min(limit, samples.length));
        expect(greatest(rows.map((row) => row.forces[0]!))).toBe(greatest(samples));
      }),
      seeded,
    );
  });
});
