import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LineKernel, typescriptKernel } from "../src/kernel/lineKernel.ts";
import { fastestKernel } from "../src/kernel/lineKernelWasm.ts";
import { Cfc60, cfc60 } from "../src/record/cfc60.ts";
import { ElementPeakFinder, rowPlan, rowsMemory, topAt } from "../src/record/elementPeaks.ts";
import { CUT, FALL, run } from "./rigs.ts";

/** Peak that the finder makes of one element's readings, with another element beside it and one on a second line. */
function found(readings: Float64Array, step: number, kernel: (size: number) => LineKernel): number {
  const room = rowsMemory(2, step);
  const { memory, ...rest } = kernel(8 + room + rowsMemory(1, step));
  const lines = [
    { at: 0, elements: 2, rowsAt: 8 },
    { at: 4, elements: 1, rowsAt: 8 + room },
  ];
  const finder = new ElementPeakFinder({ memory, ...rest }, lines, step);
  for (const reading of readings) {
    memory.set([reading / 2, reading], 0);
    memory[4] = 3 * reading;
    finder.read();
  }
  const [half, whole, triple] = finder.peaks();
  expect(half! / whole!).toBeCloseTo(0.5, 6);
  expect(triple! / whole!).toBeCloseTo(3, 5);
  return whole!;
}

/** The rows that the readings make, all kept: means of pairs, or as they are with `fill` − 1 between each and the next. */
function rowsOf(noted: Float64Array, fill: number): Float32Array {
  const readings = noted.map((reading) => Math.max(0, reading));
  const rows = [readings[0]!];
  if (fill > 0) {
    for (let k = 1; k < readings.length; k++)
      for (let j = 1; j <= fill; j++) rows.push(readings[k - 1]! + (j / fill) * (readings[k]! - readings[k - 1]!));
  } else for (let k = 2; k < readings.length; k += 2) rows.push(0.5 * (readings[k - 1]! + readings[k]!));
  return Float32Array.from(rows);
}

/** A step that is read in pairs, one that is long enough to be read as it is, one that needs rows between. */
const STEPS = [
  { step: 1e-4, fill: 0 },
  { step: 6e-4, fill: 1 },
  { step: 2e-3, fill: 3 },
] as const;

for (const { step, fill } of STEPS) {
  describe(`peaks of elements found while a run of steps of ${1000 * step} ms goes on`, () => {
    const { rate, every, spacing } = rowPlan(step);
    const agree = (readings: Float64Array) => {
      const rows = rowsOf(readings, fill);
      const filtered = Float64Array.from(rows);
      new Cfc60(rate, spacing).smooth(filtered, filtered.length);
      const tops = [...filtered.keys()].slice(1, -1).map((k) => topAt(filtered, k));
      const whole = Math.max(0, ...filtered, ...tops);
      // Rows and peaks are kept in single precision; what decays beyond a block's margin is less.
      const range = Math.max(...rows.map(Math.abs), 1);
      for (const kernel of [typescriptKernel, fastestKernel]) {
        expect(Math.abs(found(readings, step, kernel) - whole) / range).toBeLessThan(1e-6);
      }
    };
    const perRow = fill === 0 ? 2 : 1 / fill;
    const block = Math.ceil(0.05 * rate) * perRow;

    it("come from enough rows for the filter", () => {
      expect(rate).toBeGreaterThan(1200 - 1e-9);
      expect(rate * perRow * every * step).toBeCloseTo(1, 9);
    });

    it("go through a filter that has the class's gain on what they read, up to 400 Hz", () => {
      // The class at the rate of the signals, where its recipe bends nothing; a sine's amplitude after both passes.
      const amplitude = (filter: Cfc60, signalRate: number, frequency: number, means: number) => {
        const samples = Float64Array.from({ length: Math.round(2 * signalRate) }, (_, k) =>
          Math.sin((2 * Math.PI * frequency * k) / signalRate),
        );
        filter.smooth(samples, samples.length);
        const middle = samples.subarray(samples.length >> 2, (3 * samples.length) >> 2);
        return means * Math.sqrt((2 * middle.reduce((sum, y) => sum + y * y, 0)) / middle.length);
      };
      for (const frequency of [10, 40, 60, 100, 125, 160, 200, 250, 300, 400]) {
        const wanted = amplitude(new Cfc60(10_000), 10_000, frequency, 1);
        const means = Math.abs(Math.cos(Math.PI * frequency * spacing));
        expect(Math.abs(amplitude(new Cfc60(rate, spacing), rate, frequency, means) - wanted)).toBeLessThan(0.02);
      }
    });

    it("are those of the whole trace filtered at once, whatever happens", () => {
      const event = fc.record({
        at: fc.nat(1500),
        width: fc.integer({ min: 1, max: 300 }),
        height: fc.integer({ min: -4000, max: 9000 }),
      });
      const level = fc.integer({ min: 1, max: 4000 });
      fc.assert(
        fc.property(
          fc.array(event, { maxLength: 10 }),
          level,
          fc.integer({ min: 1, max: 1500 }),
          (events, base, count) => {
            const readings = new Float64Array(count).fill(base);
            for (const { at, width, height } of events)
              for (let k = at; k < Math.min(at + width, count); k++) readings[k] = readings[k]! + height;
            if (readings.some((reading) => reading > 0)) agree(readings);
          },
        ),
        { seed: 60, numRuns: 300 },
      );
    });

    it("are right for a blow at and around every seam between blocks, and at the run's begin and end", () => {
      const count = Math.ceil(4.4 * block);
      const seams = [0, 1, 2, 3, 4].map((b) => Math.round(b * block));
      for (const seam of [...seams, count - 1])
        for (const off of [-9, -3, -2, -1, 0, 1, 2, 3, 9]) {
          const readings = new Float64Array(count).fill(1000);
          for (let k = Math.max(0, seam + off); k < Math.min(count, seam + off + 6); k++) readings[k] = 8000;
          agree(readings);
        }
    });

    it("are right for runs of a few readings", () => {
      for (let count = 1; count < 8; count++) agree(Float64Array.from({ length: count }, (_, k) => 500 + 300 * k));
    });
  });
}

describe("peaks of elements of a rig of 150 m over 10 s", () => {
  const long = run(
    { ...CUT, span: 150, main: { ...CUT.main, pretension: 6000 }, cut: { at: 0, time: 0.5 }, duration: 10 },
    { accuracy: "standard" },
  );
  const { elementPeaks, peaks, signals, rate } = long;

  it("are filtered: where an end element is the load on an anchor, they are that signal's filtered peak, not its raw one", () => {
    const ends = [
      [elementPeaks.main.peak.at(-1)!, peaks.mainB],
      [elementPeaks.backup.peak[0]!, peaks.backupA],
      [elementPeaks.backup.peak.at(-1)!, peaks.backupB],
    ] as const;
    // Elements are read less often than signals.
    for (const [peak, of] of ends) expect(Math.abs(peak / of.cfc60 - 1)).toBeLessThan(0.015);
    // At the far end of the backup a blow of a millisecond or two passes, which the filter takes the top off.
    expect(peaks.backupB.raw / peaks.backupB.cfc60).toBeGreaterThan(1.05);
  });

  it("say how many samples a second went through the filter", () => {
    for (const { rate: samples } of [elementPeaks.main, elementPeaks.backup]) expect(samples).toBeGreaterThan(1200);
  });

  it("keep raw and filtered peaks of the signals apart, each the largest of its own", () => {
    for (const name of ["mainB", "backupA", "backupB", "leash"] as const) {
      expect(peaks[name].raw).toBe(Math.max(...signals[name]));
      expect(peaks[name].cfc60).toBeCloseTo(Math.max(...cfc60(signals[name], rate)), 3);
    }
  });
});

describe("peaks of elements", () => {
  it("do not depend on how long the run goes on after them", () => {
    const [short, longer] = [run(FALL), run({ ...FALL, duration: 6 })];
    const most = (recording: typeof short) => Math.max(...recording.elementPeaks.main.peak);
    expect(short.peaks.mainA.cfc60).toBe(longer.peaks.mainA.cfc60);
    expect(most(longer) / most(short)).toBeCloseTo(1, 6);
  });
});
