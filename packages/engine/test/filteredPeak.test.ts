import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cfc60 } from "../src/cfc60.ts";
import { PeakFinder } from "../src/filteredPeak.ts";

const whole = (signal: Float32Array, rate: number): number => Math.max(0, ...cfc60(signal, rate));

describe("the peak of a filtered signal", () => {
  for (const rate of [700, 1000, 10_000]) {
    it(`is that of the whole signal filtered, at ${rate} samples a second`, () => {
      const finder = new PeakFinder(rate);
      const event = fc.record({
        at: fc.nat(2999),
        width: fc.integer({ min: 1, max: 400 }),
        height: fc.integer({ min: -5000, max: 9000 }),
      });
      fc.assert(
        fc.property(fc.array(event, { maxLength: 12 }), fc.integer({ min: 0, max: 4000 }), (events, level) => {
          const data = new Float32Array(3000).fill(level);
          for (const { at, width, height } of events)
            for (let k = at; k < Math.min(at + width, data.length); k++) data[k] = data[k]! + height;
          const found = finder.find({ data, first: 0, stride: 1, count: data.length });
          // What decays below rounding beyond a block's margin, relative to the largest sample there can be.
          expect(Math.abs(found.value - whole(data, rate))).toBeLessThan(1e-10 * 1e5);
          expect(cfc60(data, rate)[found.index] ?? 0).toBeCloseTo(found.value, 4);
        }),
        { seed: 60, numRuns: 200 },
      );
    });
  }

  it("is found in a column of a table, with nothing counting as 0", () => {
    const rows = 500;
    const data = new Float32Array(3 * rows).fill(Number.NaN);
    const column = new Float32Array(rows);
    for (let r = 0; r < 300; r++) column[r] = 1000 + 900 * Math.sin(r / 7);
    for (let r = 0; r < 300; r++) data[3 * r + 1] = column[r]!;
    const found = new PeakFinder(1000).find({ data, first: 1, stride: 3, count: rows });
    expect(found.value).toBeCloseTo(whole(column, 1000), 6);
  });

  it("is 0 where there is nothing", () => {
    const finder = new PeakFinder(1000);
    expect(finder.find({ data: new Float32Array(0), first: 0, stride: 1, count: 0 })).toEqual({ value: 0, index: 0 });
  });
});
