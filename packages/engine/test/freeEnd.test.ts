/** The end of a main line that was cut: half an element's mass on nothing but its last element. */
import { describe, expect, it } from "vitest";
import { type Problem, resultOf, startRun } from "../src/index.ts";
import { COLUMN, HEAD } from "../src/kernel/lineLayout.ts";
import { cfc60 } from "../src/record/cfc60.ts";
import { CUT } from "./rigs.ts";

const GRAVITY = 9.80665;
/** The ring starts beyond the connection and never comes near the end that is cut, at A. */
const RIG: Problem = { ...CUT, walker: { ...CUT.walker, at: 0.7 } };

/** Every step from the cut on: pull of the last element on the end node [N, per axis], the node's velocity [m/s, per axis]. */
function endOf(size: number, stepShare?: number) {
  const started = startRun(RIG, { size, ...(stepShare === undefined ? {} : { stepShare }) });
  if (!started.ok) throw new Error(started.message);
  const { run } = started;
  const { main, step } = run.model;
  const pulls: number[][] = [[], [], []];
  const speeds: number[][] = [[], [], []];
  let tension = 0;
  const column = (c: number) => run.memory[main.base + c * main.pitch]!;
  while (run.status === "running") {
    const before = run.time < RIG.cut!.time;
    run.advance(1);
    if (before) tension = column(COLUMN.T);
    for (let c = 0; c < 3 && !before; c++) {
      pulls[c]!.push(run.memory[main.head + HEAD.firstPull + c]!);
      speeds[c]!.push(column(COLUMN.VX + c));
    }
  }
  const result = resultOf(run);
  if (!result.ok) throw new Error(result.message);
  const { backupA, backupB } = result.recording.peaks;
  const catchPeak = Math.max(backupA.cfc60, backupB.cfc60);
  return { pulls, speeds, tension, catchPeak, mass: main.masses[0]!, step, events: run.events };
}
type End = ReturnType<typeof endOf>;

const length = (vector: readonly number[]): number => Math.hypot(...vector);
const sum = (values: readonly number[], from: number, to: number): number => {
  let total = 0;
  for (let k = from; k < to; k++) total += values[k]!;
  return total;
};
/** ∫ pull dt over steps `from` to `to`, per axis [N·s]. */
const impulse = ({ pulls, step }: End, from: number, to: number) => pulls.map((pull) => step * sum(pull, from, to));

describe("the free end of a cut main line", () => {
  const [coarse, fine] = [endOf(0.8), endOf(0.4)];
  // The half mass swings faster than any other: closed forms of it need steps that are short for it.
  const smooth = [endOf(0.8, 0.25), endOf(0.4, 0.25)];
  // Until the wave that the cut sends out comes back from the connection.
  const EARLY = 0.006;
  const early = (end: End) => Math.round(EARLY / end.step);

  it("is cut clear of ring and joints", () => {
    for (const { events } of [coarse, fine]) expect(events.map(({ kind }) => kind)).toEqual(["cut", "lowest"]);
  });

  it("flies off at T/√(K·μ), at most √2 times that: a half mass on its element does", () => {
    const { mass, branches } = RIG.main.material!;
    const stiffness = 6000 / 0.04 + branches.reduce((total, [modulus]) => total + modulus, 0);
    for (const end of smooth) {
      const recoil = end.tension / Math.sqrt(stiffness * mass);
      const speed = length(end.speeds.map((axis) => axis[early(end)]!));
      expect(speed).toBeGreaterThan(recoil);
      expect(speed).toBeLessThan(1.1 * Math.SQRT2 * recoil);
    }
  });

  it("is pulled on, before anything comes back to it, by a few hundredths of what it was; half of that at half the mesh", () => {
    const [a, b] = smooth.map((end) => length(impulse(end, 0, early(end))) / (end.tension * EARLY));
    expect(a).toBeLessThan(0.06);
    expect(b! / a!).toBeGreaterThan(0.4);
    expect(b! / a!).toBeLessThan(0.6);
  });

  it("is pulled on by what accelerates half an element's mass and nothing else, through the whole catch", () => {
    for (const end of [coarse, fine]) {
      const window = Math.round(0.01 / end.step);
      for (let from = 1; from + window < end.pulls[0]!.length; from += window) {
        impulse(end, from, from + window).forEach((push, c) => {
          const weight = c === 2 ? GRAVITY * window * end.step : 0;
          const change = end.speeds[c]![from + window - 1]! - end.speeds[c]![from - 1]!;
          expect(push / end.mass).toBeCloseTo(change + weight, 6);
        });
      }
    }
  });

  it("carries in the mean of any quarter second under a hundredth of the load on the backup", () => {
    const most = (end: End) => {
      const window = Math.round(0.25 / end.step);
      let largest = 0;
      for (let from = 0; from + window < end.pulls[0]!.length; from += Math.round(window / 10))
        largest = Math.max(largest, length(impulse(end, from, from + window)) / (window * end.step));
      return largest;
    };
    expect(most(coarse)).toBeLessThan(0.01 * coarse.catchPeak);
    expect(most(fine)).toBeLessThan(0.01 * fine.catchPeak);
  });

  it("reads less than a third of the backup's load on a load cell when it whips", () => {
    for (const end of [coarse, fine]) {
      // From when it has been let go: the filter takes what was before as constant.
      const filtered = end.pulls.map((pull) => cfc60(Float64Array.from(pull.slice(early(end))), 1 / end.step));
      const readings = Array.from(filtered[0]!, (_, k) => length(filtered.map((axis) => axis[k]!)));
      expect(Math.max(...readings)).toBeLessThan(0.3 * end.catchPeak);
    }
  });
});
