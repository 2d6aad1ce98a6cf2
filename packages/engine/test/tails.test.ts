import { describe, expect, it } from "vitest";
import { type Problem, startRun } from "../src/index.ts";
import { FALL, run, webbing } from "./rigs.ts";

/** A short soft line with three connections, cut at its end: the walker hangs, so that nothing but the cut happens. */
const SOFT = webbing(0.065, 0.13, 0.1);
const RIG: Problem = {
  ...FALL,
  name: "soft line cut at A",
  span: 30,
  main: { pretension: 3500, material: SOFT },
  backup: { slack: 0.025, material: SOFT, connections: [{ at: 0.25 }, { at: 0.5 }, { at: 0.75 }] },
  walker: { mass: 60, at: 0.5, tieIn: 1, lateral: 0 },
  start: "hanging",
  cut: { at: 0, time: 0.02 },
  duration: 0.35,
};

/** Elements of the main line between two places. */
function elementsBetween(problem: Problem, from: number, to: number, accuracy: "quick" | "standard" | "fine"): number {
  const started = startRun({ ...problem, duration: 0.001 }, { accuracy });
  if (!started.ok) throw new Error(started.message);
  return started.run.model.main.fractions.filter((at) => at > from + 1e-9 && at < to + 1e-9).length;
}

describe("what comes off when the main line is cut", () => {
  it("has elements enough for the fold that runs along it, and no more than that elsewhere", () => {
    expect(elementsBetween(RIG, 0, 0.25, "standard")).toBeGreaterThanOrEqual(55);
    expect(elementsBetween(RIG, 0, 0.25, "fine")).toBeGreaterThanOrEqual(110);
    expect(elementsBetween(RIG, 0.25, 0.5, "standard")).toBeLessThanOrEqual(20);
  });

  it("has them on both sides of a cut between two connections", () => {
    const inner = { ...RIG, cut: { at: 0.4, time: 0.02 } };
    expect(elementsBetween(inner, 0.25, 0.4, "standard")).toBeGreaterThanOrEqual(33);
    expect(elementsBetween(inner, 0.4, 0.5, "standard")).toBeGreaterThanOrEqual(20);
    expect(elementsBetween(inner, 0.5, 0.75, "standard")).toBeLessThanOrEqual(20);
  });

  it("leaves a line that is not cut, and a long tail, as they were", () => {
    const { cut: _, ...whole } = RIG;
    expect(elementsBetween(whole, 0, 1, "standard")).toBeLessThanOrEqual(78);
    const { backup: __, ...bare } = RIG;
    expect(
      elementsBetween({ ...bare, span: 60, walker: { ...RIG.walker, at: 0.6 } }, 0, 0.6, "standard"),
    ).toBeLessThanOrEqual(92);
  });

  it("flies past the first connection and jerks at it from behind, no less than on a mesh of a quarter of the size", () => {
    // Means over slightly different walkers: a single jerk differs by some per cent from another.
    const jerk = (size: number) => {
      const masses = [59.6, 60, 60.4];
      const peaks = masses.map((mass) => {
        const { signals, rate, peaks } = run({ ...RIG, walker: { ...RIG.walker, mass } }, { size });
        expect(signals.backupA.length).toBeGreaterThan(0.3 * rate);
        return peaks.backupA.cfc60;
      });
      return peaks.reduce((sum, peak) => sum + peak, 0) / peaks.length;
    };
    expect(jerk(0.4) / jerk(0.1)).toBeGreaterThan(0.95);
  });
});
