import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { markUnder } from "../src/time/eventMarks.ts";
import { type PeakMark, peakUnder, wordedPeaks } from "../src/time/peakMark.ts";
import { plotFrame, timeOf, xOf, yOf } from "../src/time/plotFrame.ts";
import { typedRange } from "../src/time/typedRange.ts";
import { fitRange, isFit, panned, rangeShowing, SHORTEST_RANGE, zoomed } from "../src/time/visibleRange.ts";

const time = (max: number) => fc.double({ min: -max, max: 2 * max, noNaN: true });
const seeded = { seed: 11, numRuns: 500 };

describe("the visible range", () => {
  it("stays within the run and never closes, however one zooms and pans", () => {
    const step = fc.oneof(
      fc.record({ factor: fc.double({ min: 0.05, max: 20, noNaN: true }), anchor: time(5) }),
      fc.record({ shift: time(5) }),
      fc.record({ time: fc.double({ min: 0, max: 5, noNaN: true }), paging: fc.boolean() }),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        let range = fitRange(5);
        for (const s of steps) {
          if ("factor" in s) range = zoomed(range, s.factor, s.anchor, 5);
          else if ("shift" in s) range = panned(range, s.shift, 5);
          else range = rangeShowing(range, s.time, 5, s.paging);
          expect(range.from).toBeGreaterThanOrEqual(0);
          expect(range.to).toBeLessThanOrEqual(5 + 1e-9);
          expect(range.to - range.from).toBeGreaterThanOrEqual(SHORTEST_RANGE - 1e-9);
        }
      }),
      seeded,
    );
  });

  it("keeps the moment under the pointer in its place while zooming", () => {
    const near = zoomed({ from: 1, to: 3 }, 4, 1.5, 10);
    expect((1.5 - near.from) / (near.to - near.from)).toBeCloseTo(0.25, 9);
    expect(near.to - near.from).toBeCloseTo(0.5, 9);
  });

  it("follows the cursor: a page further while playing, just enough when it is moved by hand", () => {
    const shown = { from: 1, to: 2 };
    expect(rangeShowing(shown, 1.5, 10, true)).toBe(shown);
    expect(rangeShowing(shown, 2.01, 10, true).from).toBeCloseTo(1.96, 9);
    expect(rangeShowing(shown, 2.01, 10, false)).toEqual({ from: 1.0099999999999998, to: 2.01 });
    expect(rangeShowing(shown, 0.5, 10, false)).toEqual({ from: 0.5, to: 1.5 });
    expect(rangeShowing(shown, 0.5, 10, true).from).toBeCloseTo(0.45, 9);
  });

  it("knows when the whole run is shown", () => {
    expect(isFit(fitRange(4), 4)).toBe(true);
    expect(isFit({ from: 0, to: 3.9 }, 4)).toBe(false);
    expect(fitRange(0).to).toBeGreaterThan(0);
  });
});

describe("a typed range", () => {
  const range = { from: 1, to: 2 };
  const typed = (end: "from" | "to", text: string) => typedRange(range, end, text, 4);

  it("takes seconds the way people write them", () => {
    for (const text of ["1.5", "1,5", " 1.5 s", "1.50s"])
      expect(typed("from", text)).toEqual({ ok: true, range: { from: 1.5, to: 2 } });
    expect(typed("to", "4")).toEqual({ ok: true, range: { from: 1, to: 4 } });
  });

  it("says what is wrong and moves nothing", () => {
    expect(typed("from", "soon")).toEqual({ ok: false, message: "“soon” is not a time in seconds" });
    expect(typed("from", "")).toMatchObject({ ok: false });
    expect(typed("to", "9")).toEqual({ ok: false, message: "the run lasts from 0 to 4.00 s" });
    expect(typed("to", "1")).toEqual({ ok: false, message: "the start must come before the end" });
  });
});

describe("the plot's frame", () => {
  const frame = plotFrame({ width: 1000, height: 260, compact: false, gutter: { wide: 184, compact: 108 } });

  it("leaves room for axis, words and names, and no less than something to see", () => {
    expect(frame.left + frame.width + frame.gutter).toBe(1000);
    expect(frame.top + frame.height + frame.axisHeight).toBe(260);
    expect(
      plotFrame({ width: 50, height: 20, compact: true, gutter: { wide: 184, compact: 108 } }).width,
    ).toBeGreaterThan(0);
  });

  it("turns time into place and back", () => {
    const range = { from: 1, to: 3 };
    expect(timeOf(xOf(1.7, range, frame), range, frame)).toBeCloseTo(1.7, 12);
    expect(yOf(0, 8, frame)).toBe(frame.height);
    expect(yOf(8, 8, frame)).toBe(0);
  });

  it("takes a press near an event's line as that event", () => {
    const range = { from: 0, to: 10 };
    const mark = { key: "a", time: 5, label: "cut", sentence: "Cut", rank: 1 };
    const x = xOf(5, range, frame);
    expect(markUnder([mark, { ...mark, time: 9 }], x + 20, range, frame)).toBe(5);
    expect(markUnder([mark], x + 40, range, frame)).toBeNull();
    expect(markUnder([], x, range, frame)).toBeNull();
  });
});

describe("peaks on the plot", () => {
  const frame = { width: 500, height: 100 };
  const mark = (key: string, x: number, y: number, pointedOut = false): PeakMark => {
    return { key, x, y, time: x / 100, text: `${key} kN`, colour: "#000000", pointedOut, faded: false };
  };
  const worded = (peaks: readonly PeakMark[]) => [...wordedPeaks(peaks, frame, () => 60)];

  it("are worded highest first, on the other side when one is taken, and not at all when both are", () => {
    const peaks = [mark("low", 300, 34), mark("high", 305, 30), mark("middle", 302, 32)];
    expect(worded(peaks)).toEqual([
      ["high", "right"],
      ["middle", "left"],
    ]);
  });

  it("are worded once when both ends of a line peak alike", () => {
    expect(worded([mark("same", 300, 30), { ...mark("same", 340, 31), key: "other end" }])).toEqual([
      ["same", "right"],
    ]);
  });

  it("turn inwards at the edges", () => {
    expect(worded([mark("last", 490, 10)])).toEqual([["last", "left"]]);
  });

  it("near the ground keep their mark without words, unless pointed out", () => {
    expect(worded([mark("small", 100, 95)])).toEqual([]);
    expect(worded([mark("small", 100, 95, true)])).toEqual([["small", "right"]]);
  });

  it("are met by a press near them, the nearest first", () => {
    const peaks = [mark("a", 100, 50), mark("b", 108, 50)];
    expect(peakUnder(peaks, 106, 50)).toBe(1.08);
    expect(peakUnder(peaks, 300, 50)).toBeNull();
  });
});
