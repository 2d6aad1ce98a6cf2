import { describe, expect, it } from "vitest";
import { type Problem, resultOf, simulate, solveStanding, startRun } from "../src/index.ts";
import { apart, FALL, webbing } from "./rigs.ts";

/** A slope, where half a metre along the line is 5 cm of height. */
const SLOPE: Problem = { ...FALL, span: 30, rise: 3 };
const standing = (problem: Problem, size?: number) => {
  const found = solveStanding(problem, size === undefined ? {} : { size });
  if (!found.ok) throw new Error(found.message);
  return found.standing;
};

describe("the walker stands where the rig says", () => {
  // Within the first element, on either side of the middle, and between two even nodes.
  const PLACES = [0.004, 0.006, 0.013, 0.021, 0.31, 0.5, 0.503, 0.9873, 0.994, 0.996];
  it.each(PLACES)("at %f of a sloping line: sag and tension are those of a mesh of 2 cm", (at) => {
    const problem = { ...SLOPE, walker: { ...SLOPE.walker, at } };
    for (const size of [1, 0.5, 0.25]) {
      if (Math.min(at, 1 - at) * 30 < 0.1 * size) continue;
      expect(apart(standing(problem, size).sag, standing(problem, 0.02).sag)).toBeLessThan(2e-5);
      expect(apart(standing(problem, size).tension, standing(problem, 0.02).tension)).toBeLessThan(2e-5);
    }
  });

  it.each([-0.005, -0.001, 0.001, 0.005])("though the line is to be cut %f of it away", (away) => {
    const at = 0.4;
    const cut = { at: at + away, time: 0.05 };
    const problem = { ...SLOPE, walker: { ...SLOPE.walker, at }, cut };
    expect(apart(standing(problem).sag, standing(problem, 0.02).sag)).toBeLessThan(2e-5);
    // The piece that the walker is on is still held at its own end; the ring on it runs off where the line is cut.
    const started = startRun({ ...problem, duration: 0.06 });
    if (!started.ok) throw new Error(started.message);
    const { model } = started.run;
    expect(model.start).toBe(away > 0 ? model.main.seam : model.main.seam + 1);
    started.run.advance(Number.POSITIVE_INFINITY);
    expect(resultOf(started.run)).toMatchObject({ ok: true });
  });

  it("and a connection beside the cut stays on its own side of it", () => {
    const backup = { slack: 0.05, material: webbing(0.05, 0.03), connections: [{ at: 0.705 }, { at: 0.695 }] };
    const cut = { at: 0.7, time: 0.05 };
    const started = startRun({ ...SLOPE, backup, cut, walker: { ...SLOPE.walker, at: 0.4 } });
    if (!started.ok) throw new Error(started.message);
    const { joints, main } = started.run.model;
    expect(joints.map((joint) => joint.main - main.seam)).toEqual([1, 0]);
  });

  it("a fall from a hand's breadth beside an anchor has the tie-in start and end where a fine mesh has it", () => {
    const problem = { ...SLOPE, walker: { ...SLOPE.walker, at: 0.006 } };
    const of = (size: number) => {
      const result = simulate(problem, { size });
      if (!result.ok) throw new Error(result.message);
      return result.recording.walker;
    };
    expect(apart(of(0.4).start, of(0.05).start)).toBeLessThan(1e-4);
    // What the mesh leaves of a drop anywhere on the line.
    expect(apart(of(0.4).drop, of(0.05).drop)).toBeLessThan(0.01);
  });
});
