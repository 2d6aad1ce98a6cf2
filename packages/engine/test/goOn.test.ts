/** A run that goes on on a coarser mesh. */
import { describe, expect, it } from "vitest";
import { type LineKernel, type Problem, resultOf, Simulation, typescriptKernel, wasmKernel } from "../src/index.ts";
import { COLUMN, RUN } from "../src/kernel/lineLayout.ts";
import type { Line } from "../src/line/line.ts";
import { apart, CUT, FALL } from "./rigs.ts";

/** Long enough to be caught and come up again. The ring is beyond the connection, away from what comes off. */
const CAUGHT: Problem = { ...CUT, span: 40, walker: { ...CUT.walker, at: 0.7 }, duration: 6 };
const HANGING: Problem = { ...FALL, start: "hanging", backup: CUT.backup!, duration: 4 };

function until(run: Simulation, time: number): Simulation {
  while (run.status === "running" && run.time < time) run.advance(1);
  return run;
}
/** As the walker, caught once, is at the top again. */
function caught(
  problem: Problem,
  options: { readonly kernel?: (size: number) => LineKernel; readonly shapes?: true } = {},
) {
  const run = new Simulation(problem, { shapes: false, ...options });
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  while (run.status === "running") {
    run.advance(1);
    const { walkerHeight: height } = run;
    if (high === Number.NEGATIVE_INFINITY) low = Math.min(low, height);
    if (run.time > 0.3 && height > low + 0.3) high = Math.max(high, height);
    if (height < high - 0.05) return run;
  }
  throw new Error("the walker did not come back up");
}

function finished(run: Simulation) {
  run.advance(Number.POSITIVE_INFINITY);
  const result = resultOf(run);
  if (!result.ok) throw new Error(result.message);
  return result.recording;
}

/** Some swings after a fall that the main line held. */
const fallen = () => until(new Simulation({ ...FALL, duration: 7 }, { shapes: false }), 6);

const linesOf = ({ model: { main, backup } }: Simulation): readonly Line[] => (backup ? [main, backup] : [main]);

/** Momentum of both lines [N·s] and their mass-weighted mean place [kg·m], per axis. */
function carriedBy(run: Simulation) {
  const momentum = [0, 0, 0];
  const place = [0, 0, 0];
  for (const { base, pitch, nodes, masses } of linesOf(run)) {
    for (let i = 0; i < nodes; i++) {
      for (let c = 0; c < 3; c++) {
        momentum[c]! += masses[i]! * run.memory[base + (COLUMN.VX + c) * pitch + i]!;
        place[c]! += masses[i]! * run.memory[base + c * pitch + i]!;
      }
    }
  }
  return { momentum, place };
}

/** Force of every branch in every taut element of the main line, times the element's length [N·m]; as sums over the line. */
function branchSums(run: Simulation): readonly number[] {
  const line = run.model.main;
  const m = run.memory;
  const { base, pitch } = line;
  return line.runs[0]!.material.branches.map((_, b) => {
    let sum = 0;
    for (let e = 0; e < line.elements; e++) {
      const x = base + e;
      const span = Math.hypot(...[0, 1, 2].map((c) => m[x + c * pitch + 1]! - m[x + c * pitch]!));
      const strain = span * m[x + COLUMN.IL * pitch]! - 1;
      if (strain <= 0) continue;
      sum += line.lengths[e]! * (m[x + (COLUMN.R + b) * pitch]! + m[line.runsAt + RUN.stiffness + b]! * strain);
    }
    return sum;
  });
}

describe("a run that goes on on a coarser mesh", () => {
  it("has fewer elements and longer steps from there on, and what it recorded before stays", () => {
    const [whole, gone] = [caught(CAUGHT), caught(CAUGHT)];
    const [elements, step, samples] = [gone.model.main.elements, gone.model.step, gone.recorder.samples];
    expect(gone.goOn(1.5)).toBe(true);
    expect(gone.model.main.elements).toBeLessThan(0.75 * elements);
    expect(gone.model.step).toBeGreaterThan(1.3 * step);
    expect(gone.time).toBe(whole.time);
    const [one, other] = [finished(whole), finished(gone)];
    expect(other.mesh.steps).toBeLessThan(one.mesh.steps);
    // To the end of the last step, which is a longer one.
    expect(Math.abs(other.signals.leash.length - one.signals.leash.length)).toBeLessThan(5);
    expect(other.signals.leash.subarray(0, samples)).toEqual(one.signals.leash.subarray(0, samples));
    expect(other.elementPeaks.backup.at).toEqual(one.elementPeaks.backup.at);
  });

  it("shows the lines on the mesh that it began on, where the coarser one has them, apart where they are cut", () => {
    const run = caught({ ...CAUGHT, cut: { at: 0.3, time: 0.05 } }, { shapes: true });
    const before = run.recorder.frames;
    const { main } = run.model;
    expect(run.goOn(1.5)).toBe(true);
    const { frames } = finished(run);
    expect(frames.mainNodes).toBe(main.nodes);
    const nodes = frames.mainNodes + frames.backupNodes;
    const place = (frame: number, node: number) =>
      [0, 1, 2].map((c) => frames.positions[3 * (frame * (nodes + 2) + node) + c]!);
    const way = (frame: number, node: number, to: readonly number[]) =>
      Math.hypot(...place(frame, node).map((x, c) => x - to[c]!));
    // A frame is 4 ms; what a line of the coarser mesh cuts off a bend is less than half an element.
    for (let i = 0; i < nodes; i++) expect(way(before, i, place(before - 1, i))).toBeLessThan(0.4);
    expect(way(before, main.seam, place(before, main.seam + 1))).toBeGreaterThan(1);
    const tension = (frame: number, e: number) => frames.tensions[frame * (nodes - 2) + e]!;
    for (let e = 0; e < main.elements; e++) {
      expect(Number.isNaN(tension(before, e))).toBe(e === main.seam);
      if (e !== main.seam) expect(Math.abs(tension(before, e) - tension(before - 1, e))).toBeLessThan(400);
    }
  });

  it("hangs as it hung, and pulls as it pulled", () => {
    const [whole, gone] = [fallen(), fallen()];
    expect(gone.goOn(1.5)).toBe(true);
    const [one, other] = [finished(whole), finished(gone)];
    const mean = (values: Float32Array) => values.subarray(60_100).reduce((sum, value) => sum + value, 0) / 9900;
    expect(apart(mean(other.signals.mainA), mean(one.signals.mainA))).toBeLessThan(0.003);
    expect(apart(mean(other.signals.leash), mean(one.signals.leash))).toBeLessThan(0.01);
    expect(Math.abs(mean(other.walkerHeight) - mean(one.walkerHeight))).toBeLessThan(0.01);
  });

  it("keeps the lines' momentum and middle, but for what hits an anchor", () => {
    const run = caught(CAUGHT);
    const before = carriedBy(run);
    const { kinetic } = run.ledger.now;
    expect(run.goOn(1.5)).toBe(true);
    const after = carriedBy(run);
    const mass = linesOf(run).reduce((sum, { masses }) => sum + masses.reduce((a, b) => a + b), 0);
    for (let c = 0; c < 3; c++) {
      expect(Math.abs(after.momentum[c]! - before.momentum[c]!) / Math.sqrt(2 * mass * kinetic)).toBeLessThan(0.05);
      expect(Math.abs(after.place[c]! - before.place[c]!) / mass).toBeLessThan(0.02);
    }
  });

  it("keeps the force of every branch of a taut line", () => {
    const run = fallen();
    const sums = branchSums(run);
    const scale = Math.max(...sums.map(Math.abs));
    expect(run.goOn(1.5)).toBe(true);
    for (const [b, sum] of branchSums(run).entries()) expect(Math.abs(sum - sums[b]!) / scale).toBeLessThan(0.02);
  });

  it("loses a little energy by it, makes none, and books what it loses", () => {
    const run = caught(CAUGHT);
    const before = { ...run.ledger.now };
    expect(run.goOn(1.5)).toBe(true);
    const { lossMain, lossBackup, lossContact } = run.ledger.now;
    const lost = lossMain + lossBackup + lossContact - before.lossMain - before.lossBackup - before.lossContact;
    expect(lost).toBeGreaterThan(0);
    expect(lost / run.ledger.moved).toBeLessThan(0.02);
    const { energy } = finished(run);
    expect(energy.imbalance / energy.moved).toBeLessThan(2e-3);
    expect(energy.created / energy.moved).toBeLessThan(1e-3);
  });

  it("is caught again as on the finer mesh", () => {
    for (const coarser of [1.5, 2]) {
      const [whole, gone] = [caught(CAUGHT), caught(CAUGHT)];
      const later = gone.time;
      expect(gone.goOn(coarser)).toBe(true);
      const late = (run: Simulation) => Math.max(...finished(run).signals.leash.subarray(1e4 * (later + 0.2)));
      expect(apart(late(gone), late(whole))).toBeLessThan(0.06);
    }
  });

  it("gives the same bits by either kernel", () => {
    const [one, other] = [typescriptKernel, wasmKernel as (size: number) => LineKernel].map((kernel) => {
      const run = caught(CAUGHT, { kernel });
      expect(run.goOn(1)).toBe(true);
      until(run, run.time + 0.3);
      expect(run.goOn(2)).toBe(true);
      const { peaks, elementPeaks, walker, energy } = finished(run);
      return { peaks, elementPeaks, walker, energy };
    });
    expect(other).toEqual(one);
  });

  it("with 1 takes the short elements of a tail away and leaves the backup's as they are", () => {
    const tail: Problem = { ...CAUGHT, cut: { at: 0.3, time: 0.05 } };
    const run = caught(tail);
    const { main, backup } = run.model;
    const tension = run.recorder.channels[3]![run.recorder.samples - 1]!;
    expect(run.goOn(1)).toBe(true);
    expect(run.model.main.elements).toBeLessThan(main.elements);
    expect(run.model.backup!.fractions).toEqual(backup!.fractions);
    run.advance(1);
    expect(apart(run.recorder.channels[3]![run.recorder.samples - 1]!, tension)).toBeLessThan(0.02);
    finished(run);
  });

  it("keeps the legs of an anchor, and what has parted of them, as they were", () => {
    const rock = (y: number) => [-2, y, 1] as const;
    const legs = [-1, 1].map((y) => ({ rock: rock(y), stiffness: 200_000 }));
    const failing = {
      ...FALL,
      letGo: 0.1,
      backup: CUT.backup!,
      anchors: { A: { legs } },
      legFailure: { anchor: "A", leg: 0, time: 0.4 },
    } as const;
    const run = until(new Simulation(failing, { shapes: false }), 1.8);
    const [anchor] = run.legAnchors;
    const was = [...anchor!.state];
    expect(anchor!.whole).toEqual([false, true]);
    expect(run.goOn(1.5)).toBe(true);
    expect([...run.legAnchors[0]!.state]).toEqual(was);
    expect(run.legAnchors[0]!.whole).toEqual([false, true]);
    const { events } = finished(run);
    expect(events.filter(({ part }) => part === "anchorA")).toHaveLength(1);
  });
});

describe("a run does not go on on another mesh", () => {
  const refuses = (run: Simulation) => {
    const { main, step } = run.model;
    expect(run.goOn(1.5)).toBe(false);
    expect(run.model.main).toBe(main);
    expect(run.model.step).toBe(step);
    expect(resultOf(finishedRun(run)).ok).toBe(true);
  };
  const finishedRun = (run: Simulation) => {
    run.advance(Number.POSITIVE_INFINITY);
    return run;
  };

  it("before what is to fail has failed", () =>
    refuses(until(new Simulation({ ...CAUGHT, duration: 1 }, { shapes: false }), 0.02)));
  it("while somebody stands on the line", () =>
    refuses(until(new Simulation({ ...FALL, duration: 1 }, { shapes: false }), 0.1)));
  it("where a weblock lets webbing through", () => {
    const slip = { ...HANGING, main: { ...HANGING.main, slip: { A: 9000 } }, duration: 1 };
    refuses(until(new Simulation(slip, { shapes: false }), 0.2));
  });
  it("where something has parted that the coarser mesh does not have", () => {
    const weak = { from: 0.3, to: 0.31, strength: 2600 };
    const weakly = { ...FALL, backup: CUT.backup!, main: { ...FALL.main, weakZones: [weak] }, duration: 3 };
    const run = until(new Simulation(weakly, { shapes: false }), 2.5);
    expect(run.events.some(({ kind, part }) => kind === "break" && part === "main")).toBe(true);
    refuses(run);
  });
  it("where two joints would share a node that do not share one", () => {
    const backup = { ...CUT.backup!, tapes: [{ at: 0.506 }] };
    refuses(caught({ ...CAUGHT, backup }));
  });
  it("to a mesh of shorter steps", () => {
    const run = caught(CAUGHT);
    expect(run.goOn(2)).toBe(true);
    expect(run.goOn(1.5)).toBe(false);
  });
});
