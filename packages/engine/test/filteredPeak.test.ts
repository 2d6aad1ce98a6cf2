import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cfc60 } from "../src/record/cfc60.ts";
import { PeakFinder } from "../src/record/filteredPeak.ts";

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
          const found = finder.find(data);
          // What decays below rounding beyond a block's margin, relative to the largest sample there can be.
          expect(Math.abs(found.value - whole(data, rate))).toBeLessThan(1e-10 * 1e5);
          expect(cfc60(data, rate)[found.index] ?? 0).toBeCloseTo(found.value, 4);
        }),
        { seed: 60, numRuns: 200 },
      );
    });
  }

  it("is 0 where there is nothing", () => {
    expect(new PeakFinder(1000).find(new Float32Array(0))).toEqual({ value: 0, index: 0 });
  });
});
