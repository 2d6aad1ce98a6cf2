import { describe, expect, it } from "vitest";
import { SIGNAL_RATE, SIGNALS } from "../src/index.ts";
import { CUT, run } from "./rigs.ts";

const bytes = (numbers: Float32Array): string => Buffer.from(numbers.slice().buffer).toString("base64");

describe("what a run records", () => {
  // Longer than there is room for at first: the arrays are made anew on the way.
  const long = { ...CUT, duration: 10 };
  const shown = run(long);

  it("reaches to its end, sample by sample and frame by frame, however long it takes", () => {
    expect(shown.signals.leash.length).toBeGreaterThanOrEqual(10 * SIGNAL_RATE);
    expect(shown.frames.count).toBeGreaterThanOrEqual(10 * shown.frames.rate);
    const short = run({ ...CUT, duration: 1 });
    for (const name of SIGNALS) {
      expect(bytes(shown.signals[name].subarray(0, SIGNAL_RATE))).toBe(
        bytes(short.signals[name].subarray(0, SIGNAL_RATE)),
      );
    }
    const perFrame = 3 * (shown.frames.mainNodes + shown.frames.backupNodes + 2);
    expect(shown.frames.positions.length).toBe(perFrame * shown.frames.count);
    // At rest before the cut every node is where the equilibrium has it; at the end the walker hangs below.
    expect(shown.frames.positions.at(-1)).toBeCloseTo(shown.walkerHeight.at(-1)!, 1);
  });

  it("is the same without the lines' shapes, but that frames hold ring and walker alone", () => {
    const plain = run(long, { accuracy: "quick", shapes: false });
    for (const name of SIGNALS) expect(bytes(plain.signals[name])).toBe(bytes(shown.signals[name]));
    expect(plain.peaks).toEqual(shown.peaks);
    expect(plain.elementPeaks).toEqual(shown.elementPeaks);
    expect(plain.energy.imbalance).toBe(shown.energy.imbalance);
    const { frames } = plain;
    expect([frames.mainNodes, frames.backupNodes, frames.tensions.length, frames.fractions.length]).toEqual([
      0, 0, 0, 0,
    ]);
    expect(frames.rate).toBe(shown.frames.rate);
    const perFrame = 3 * (shown.frames.mainNodes + shown.frames.backupNodes + 2);
    for (const f of [0, 100, frames.count - 1]) {
      const all = shown.frames.positions.subarray((f + 1) * perFrame - 6, (f + 1) * perFrame);
      expect(bytes(frames.positions.subarray(6 * f, 6 * f + 6))).toBe(bytes(all));
    }
  });
});
