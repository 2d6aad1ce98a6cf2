/** What feet may do to the line that they stand on while they let go. */
import { describe, expect, it } from "vitest";
import { type Problem, readProblem } from "../src/index.ts";
import { Simulation } from "../src/run/simulation.ts";
import { CUT, FALL, run } from "./rigs.ts";

/** The main line goes while somebody stands on it, slow to let go. */
const STANDING: Problem = {
  ...CUT,
  start: "standing",
  walker: { mass: 80, at: 0.2, tieIn: 1, lateral: 0.3 },
  letGo: 0.4,
  duration: 0.5,
};
const WEIGHT = 80 * 9.80665;

function workOfFeet(problem: Problem): number {
  const simulation = new Simulation(problem, { accuracy: "quick" });
  simulation.advance(Number.POSITIVE_INFINITY);
  return simulation.ledger.now.feet;
}

describe("feet on a line that falls away", () => {
  it.each([0, 0.1, 0.2, 0.4])("that reach %f m do no more work than the weight over that way", (feetReach) => {
    const work = workOfFeet({ ...STANDING, feetReach });
    expect(work).toBeLessThan(WEIGHT * (feetReach + 0.01));
  });

  it("would do more than legs can without an end to their reach", () => {
    expect(workOfFeet(STANDING)).toBeGreaterThan(WEIGHT);
  });

  it("let go when it has left them, and the event says when", () => {
    const timeOf = (problem: Problem) => run(problem).events.find(({ kind }) => kind === "letGo")!.time;
    expect(timeOf(STANDING)).toBeCloseTo(0.4, 2);
    expect(timeOf({ ...STANDING, feetReach: 0.1 })).toBeLessThan(0.15);
  });

  it("keep their energy booked", () => {
    const { energy } = run({ ...STANDING, feetReach: 0.1, duration: 2 });
    expect(energy.imbalance / energy.moved).toBeLessThan(1.5e-4);
  });
});

describe("feet on a line that stays", () => {
  it("never reach their end: a fall is the same to the bit", () => {
    const { leash, mainA } = run(FALL).signals;
    const reaching = run({ ...FALL, feetReach: 0.01 }).signals;
    expect(reaching.leash).toEqual(leash);
    expect(reaching.mainA).toEqual(mainA);
  });

  it("are refused a reach below 0", () => {
    const read = readProblem({ ...FALL, feetReach: -0.1 });
    expect(read).toMatchObject({ ok: false, issues: [{ path: "feetReach" }] });
  });
});
