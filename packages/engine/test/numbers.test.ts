import { describe, expect, it } from "vitest";
import {
  BareLine,
  type Material,
  type Problem,
  type Recording,
  SIGNALS,
  Simulation,
  simulate,
  typescriptKernel,
} from "../src/index.ts";
import { apart, CUT, FALL, run, webbing } from "./rigs.ts";

/** Comparing long arrays entry by entry in `expect` takes seconds. */
const sameBits = (a: Float32Array, b: Float32Array): boolean =>
  a.length === b.length && a.every((value, k) => Object.is(value, b[k]));
const sameSignals = (a: Recording, b: Recording): boolean =>
  SIGNALS.every((name) => sameBits(a.signals[name], b.signals[name]));

describe("a run", () => {
  it("in slices equals one in a go bit for bit, and leaves the same events", () => {
    const whole = new Simulation(CUT, { accuracy: "quick" });
    whole.advance(Number.POSITIVE_INFINITY);
    const sliced = new Simulation(CUT, { accuracy: "quick" });
    for (let k = 1; sliced.advance(k) === "running"; k = (k * 7 + 3) % 500)
      expect(sliced.progress).toBeLessThanOrEqual(1);
    expect(sliced.steps).toBe(whole.steps);
    for (const [k, channel] of whole.recorder.channels.entries())
      expect(sameBits(sliced.recorder.channels[k]!, channel)).toBe(true);
    expect(sameBits(sliced.recorder.positions, whole.recorder.positions)).toBe(true);
    expect(sliced.events).toEqual(whole.events);
    const [one, other] = [sliced.ledger.result(), whole.ledger.result()];
    expect(one.imbalance).toBe(other.imbalance);
    expect(sameBits(one.series.kinetic, other.series.kinetic)).toBe(true);
  });

  it("on either kernel is the same to the last bit", () => {
    const other = run(CUT, { accuracy: "quick", kernel: typescriptKernel });
    expect(sameSignals(other, run(CUT))).toBe(true);
  });

  it("that has diverged says where, and gives no numbers", () => {
    const wild = simulate({ ...FALL, duration: 1 }, { accuracy: "quick", stepShare: 1.6 });
    expect(wild.ok).toBe(false);
    if (!wild.ok) expect(["diverged", "audit"]).toContain(wild.reason);
  });
});

/** The same rig seen from the other side of the gap. */
function mirrored(problem: Problem): Problem {
  const { main, walker, cut } = problem;
  return {
    ...problem,
    rise: -problem.rise,
    main: {
      ...main,
      ...(main.sections
        ? {
            sections: main.sections
              .map(({ material }, k) => ({ material, to: 1 - (k === 0 ? 0 : main.sections![k - 1]!.to) }))
              .reverse(),
          }
        : {}),
    },
    walker: { ...walker, at: 1 - walker.at },
    ...(cut ? { cut: { ...cut, at: 1 - cut.at } } : {}),
  };
}

describe("symmetry", () => {
  it("a rig seen in the mirror gives the mirrored result", () => {
    const { material, ...main } = FALL.main;
    const sections = [
      { to: 0.3, material: material! },
      { to: 1, material: webbing(0.07, 0.06) },
    ];
    const crooked: Problem = { ...FALL, rise: 1.5, main: { ...main, sections }, walker: { ...FALL.walker, at: 0.35 } };
    const [here, there] = [run(crooked), run(mirrored(crooked))];
    expect(apart(there.standing.tension, here.standing.tension)).toBeLessThan(0.02);
    expect(apart(there.standing.sag, here.standing.sag)).toBeLessThan(1e-6);
    // Rounding differs, and a leash that comes taut by jerks is sensitive to it.
    expect(apart(there.walker.drop, here.walker.drop)).toBeLessThan(1e-3);
    expect(apart(there.peaks.leash.cfc60, here.peaks.leash.cfc60)).toBeLessThan(0.01);
    expect(apart(there.peaks.mainB.cfc60, here.peaks.mainA.cfc60)).toBeLessThan(0.01);
    expect(apart(there.peaks.mainA.cfc60, here.peaks.mainB.cfc60)).toBeLessThan(0.01);
  });

  it("a fall to the left is the fall to the right, bit for bit, with y the other way", () => {
    const right = run(FALL);
    const left = run({ ...FALL, walker: { ...FALL.walker, lateral: -FALL.walker.lateral } });
    expect(sameSignals(left, right)).toBe(true);
    const { positions, count, mainNodes } = right.frames;
    const perFrame = 3 * (mainNodes + 2);
    const last = (count - 1) * perFrame;
    for (let k = last; k < last + perFrame; k += 3) {
      expect(left.frames.positions[k]).toBe(positions[k]);
      expect(left.frames.positions[k + 1]! + positions[k + 1]!).toBe(0);
      expect(left.frames.positions[k + 2]).toBe(positions[k + 2]);
    }
  });

  it("a rig four times as long, twice as heavy and twice as slow is the same rig", () => {
    const scale = ({ mass, curve, branches }: Material): Material => ({
      mass: (mass * 2) / 4,
      curve: curve.map(([strain, T]) => [strain, 2 * T] as const),
      branches: branches.map(([E, tau]) => [2 * E, 2 * tau] as const),
    });
    const large: Problem = {
      ...FALL,
      span: 80,
      main: { pretension: 5000, material: scale(FALL.main.material!) },
      leash: { length: 5.6, material: scale(FALL.leash.material) },
      ring: { mass: 0.2, clearance: 0.1, friction: 0.15 },
      walker: { mass: 160, at: 0.5, tieIn: 4, lateral: 1.2 },
      letGo: 0.6,
      duration: 4,
    };
    const [small, big] = [run(FALL, { size: 0.5 }), run(large, { size: 2 })];
    expect(apart(big.standing.tension, 2 * small.standing.tension)).toBeLessThan(1e-9);
    expect(apart(big.standing.sag, 4 * small.standing.sag)).toBeLessThan(1e-9);
    expect(apart(big.walker.drop, 4 * small.walker.drop)).toBeLessThan(1e-4);
    expect(apart(big.peaks.leash.raw, 2 * small.peaks.leash.raw)).toBeLessThan(2e-3);
    expect(apart(big.peaks.mainA.raw, 2 * small.peaks.mainA.raw)).toBeLessThan(2e-3);
  });
});

describe("a line by itself", () => {
  it("that nothing holds keeps its momentum and its angular momentum", () => {
    const line = new BareLine({ make: { material: webbing(0.06, 0.04) }, length: 10, elements: 40, weightless: true });
    line.lay([0, 0, 0], [10.2, 0, 0]);
    line.freeEnd("first");
    line.freeEnd("last");
    for (let i = 0; i <= 40; i++) line.push(i, [Math.sin(i), 3 * Math.cos(2 * i), Math.sin(3 * i) - 0.5]);
    const turning = () => {
      const sum = [0, 0, 0];
      for (let i = 0; i <= 40; i++) {
        const [x, v] = [line.position(i), line.velocity(i)];
        for (let c = 0; c < 3; c++) {
          const [a, b] = [(c + 1) % 3, (c + 2) % 3];
          sum[c] = sum[c]! + line.massOf(i) * (x[a]! * v[b]! - x[b]! * v[a]!);
        }
      }
      return sum;
    };
    const [before, turned] = [line.momentum(), turning()];
    line.advance(5000);
    for (let c = 0; c < 3; c++) {
      expect(Math.abs(line.momentum()[c]! - before[c]!)).toBeLessThan(1e-10);
      expect(Math.abs(turning()[c]! - turned[c]!)).toBeLessThan(1e-9);
    }
  });

  it("that is elastic keeps its energy, up to what the leapfrog scheme swings by", () => {
    const elastic: Material = { ...webbing(0.06, 0.04), branches: [] };
    const line = new BareLine({
      make: { material: elastic },
      length: 10,
      elements: 40,
      weightless: true,
      stepShare: 0.05,
    });
    line.lay([0, 0, 0], [10.2, 0, 0]);
    for (let i = 1; i < 40; i++) line.push(i, [0, 0, 2 * Math.sin((Math.PI * i) / 40)]);
    const energy = () => {
      let sum = line.stored();
      for (let i = 0; i <= 40; i++) sum += 0.5 * line.massOf(i) * line.velocity(i).reduce((s, v) => s + v * v, 0);
      return sum;
    };
    const start = energy();
    let most = 0;
    for (let k = 0; k < 200; k++) {
      line.advance(100);
      most = Math.max(most, apart(energy(), start));
    }
    expect(most).toBeLessThan(1e-3);
  });
});

describe("convergence on a smooth motion", () => {
  /** Height of the middle of a plucked viscoelastic line, well before its first wave has steepened [m]. */
  function height(elements: number, stepShare: number): number {
    const line = new BareLine({
      make: { material: webbing(0.06, 0.04) },
      length: 10,
      elements,
      weightless: true,
      step: (stepShare * 10) / (elements * 2000),
    });
    line.lay([0, 0, 0], [10.3, 0, 0]);
    for (let i = 1; i < elements; i++) line.push(i, [0, 0, 6 * Math.sin((Math.PI * i) / elements)]);
    const steps = Math.round(0.02 / line.step);
    line.advance(steps);
    return line.position(elements / 2)[2];
  }
  const order = (coarse: number, middle: number, fine: number) => Math.log2((coarse - middle) / (middle - fine));

  it("is of second order in the element size", () => {
    // The step shrinks much faster than the elements, so that only they are seen.
    const at = (elements: number) => height(elements, 0.5 / (elements / 16));
    expect(order(at(16), at(32), at(64))).toBeCloseTo(2, 0);
    expect(order(at(32), at(64), at(128))).toBeGreaterThan(1.8);
  });

  it("is of second order in the step", () => {
    const at = (share: number) => height(32, share);
    expect(order(at(0.4), at(0.2), at(0.1))).toBeCloseTo(2, 3);
    expect(order(at(0.2), at(0.1), at(0.05))).toBeCloseTo(2, 3);
  });

  it("quick, standard and fine close in on each other", () => {
    const [quick, standard, fine] = (["quick", "standard", "fine"] as const).map((accuracy) => run(FALL, { accuracy }));
    expect(apart(quick!.walker.drop, fine!.walker.drop)).toBeLessThan(0.02);
    expect(apart(standard!.walker.drop, fine!.walker.drop)).toBeLessThan(0.01);
    expect(apart(quick!.peaks.leash.cfc60, fine!.peaks.leash.cfc60)).toBeLessThan(0.06);
    expect(apart(standard!.peaks.leash.cfc60, fine!.peaks.leash.cfc60)).toBeLessThan(0.05);
    expect(quick!.mesh.elements).toBeLessThan(standard!.mesh.elements);
    expect(standard!.mesh.elements).toBeLessThan(fine!.mesh.elements);
  });

  it("a slack backup on a fine mesh makes no energy", () => {
    const { energy } = run({ ...CUT, cut: { at: 0, time: 1.9 }, duration: 0.8 }, { size: 0.08 });
    expect(energy.created / energy.moved).toBeLessThan(2e-3);
  });

  it("a light ring that slides fast on a frictionless line makes no energy", () => {
    const { energy } = run({
      ...FALL,
      rise: 3,
      main: { ...FALL.main, pretension: 6000 },
      ring: { ...FALL.ring, friction: 0 },
      walker: { ...FALL.walker, at: 0.25 },
      start: "hanging",
      duration: 1,
    });
    expect(energy.gain).toBe(0);
    expect(energy.created / energy.moved).toBeLessThan(1e-3);
  });
});
