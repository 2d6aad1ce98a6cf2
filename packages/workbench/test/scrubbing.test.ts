import type { PlotFrame, TimeRange } from "@secondline/figures/time";
import { describe, expect, it } from "vitest";
import { createPlaybackClock, pageKey, Scrubbing } from "../src/index.ts";

/** A plot of 4 s, 400 px wide: a hundredth of a second to the pixel. */
function plot(snap: (x: number, y: number) => number | null = () => null) {
  const clock = createPlaybackClock({ duration: 4, frameStep: 0.005, frames: null });
  const seen: { range: TimeRange; measured: number[] } = { range: { from: 0, to: 4 }, measured: [] };
  const hand = new Scrubbing(() => ({
    clock,
    duration: 4,
    range: seen.range,
    frame: { width: 400 } as PlotFrame,
    onRange: (range) => {
      seen.range = range;
    },
    onMeasure: (time) => void seen.measured.push(time),
    above: 0,
    snap,
  }));
  const time = () => clock.getSnapshot().time;
  return { clock, seen, hand, time };
}
const at = (x: number, y = 50) => ({ x, y });
const turn = (more: object) => ({ ctrlKey: false, metaKey: false, shiftKey: false, deltaX: 0, deltaY: 0, ...more });

describe("one pointer on the plot", () => {
  it("moves the cursor with it", () => {
    const { hand, time } = plot();
    hand.down(1, at(100), false);
    expect(time()).toBeCloseTo(1, 9);
    hand.move(1, at(250));
    expect(time()).toBeCloseTo(2.5, 9);
    hand.up(1, at(250), true);
    hand.move(1, at(300));
    expect(time()).toBeCloseTo(2.5, 9);
  });

  it("that only presses goes to what it means there; a drag means no peak", () => {
    const press = plot(() => 1.2345);
    press.hand.down(1, at(120), false);
    press.hand.up(1, at(121), true);
    expect(press.time()).toBe(1.2345);
    const drag = plot(() => 1.2345);
    drag.hand.down(1, at(120), false);
    drag.hand.move(1, at(180));
    drag.hand.up(1, at(180), true);
    expect(drag.time()).toBeCloseTo(1.8, 9);
  });

  it("that the system takes away means nothing", () => {
    const { hand, time } = plot(() => 1.2345);
    hand.down(1, at(120), false);
    hand.up(1, at(120), false);
    expect(time()).toBeCloseTo(1.2, 9);
  });

  it("measures from where it came down, where it is told to", () => {
    const { hand, seen } = plot(() => 1.2345);
    hand.down(1, at(120), true);
    hand.up(1, at(120), true);
    expect(seen.measured).toEqual([1.2]);
  });

  it("lets a run play on that it interrupted", () => {
    const { hand, clock } = plot();
    clock.play();
    hand.down(1, at(100), false);
    expect(clock.getSnapshot().playing).toBe(false);
    hand.up(1, at(100), true);
    expect(clock.getSnapshot().playing).toBe(true);
  });
});

describe("two pointers", () => {
  it("zoom, and the first of them did not mean to move the cursor", () => {
    const { hand, seen, time, clock } = plot();
    clock.seek(3);
    hand.down(1, at(100), false);
    hand.down(2, at(200), false);
    expect(time()).toBeCloseTo(3, 9);
    hand.move(2, at(300));
    expect(seen.range.to - seen.range.from).toBeCloseTo(2, 9);
    expect(time()).toBeCloseTo(3, 9);
  });
});

describe("the wheel", () => {
  it("zooms with Ctrl, and scrolls the page where nothing is held", () => {
    const { hand, seen } = plot();
    expect(hand.wheel(turn({ deltaY: -100 }), at(200))).toBe(false);
    expect(seen.range).toEqual({ from: 0, to: 4 });
    expect(hand.wheel(turn({ deltaY: -100, ctrlKey: true }), at(200))).toBe(true);
    expect(seen.range.to - seen.range.from).toBeLessThan(4);
  });
});

describe("keys of the page", () => {
  const press = (key: string, held: object = { ctrlKey: true }) =>
    pageKey({ key, ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, ...held });

  it("save, open, undo and redo, on every keyboard", () => {
    expect(["s", "o", "z", "y"].map((key) => press(key))).toEqual(["save", "open", "undo", "redo"]);
    expect(press("Z", { metaKey: true, shiftKey: true })).toBe("redo");
  });

  it("leave everything else to the browser", () => {
    expect(press("s", {})).toBeUndefined();
    expect(press("z", { ctrlKey: true, altKey: true })).toBeUndefined();
    expect(press("p")).toBeUndefined();
  });
});
