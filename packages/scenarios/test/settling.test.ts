import { type Recording, SIGNAL_RATE, Simulation } from "@secondline/engine";
import { describe, expect, it, vi } from "vitest";
import { executeRun, NO_DRAW, rigStrengths, type WhatIf } from "../src/index.ts";
import { fallsFreely } from "../src/run/fate.ts";
import { runToEnd } from "../src/run/runToEnd.ts";
import { Settling } from "../src/run/settling.ts";
import { showWhatIf } from "../src/run/showRun.ts";
import { defaultDuration } from "../src/run/toProblem.ts";
import { demandStrengths } from "../src/strengths/demandStrengths.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const usual = defaultDuration(testRig);
const strengths = rigStrengths(testRig);

function recorded(rig: typeof testRig, event: WhatIf, duration?: number): Recording {
  const options = { accuracy: "quick", ...(duration === undefined ? {} : { duration }) } as const;
  const solved = finish(runToEnd({ ...rig, ground: [] }, event, demandStrengths(rig, strengths), options));
  if (!solved.ok) throw new Error(JSON.stringify(solved.trouble));
  return solved.recording;
}

describe("the end of a run", () => {
  it("waits for a ring that slides down the line: the walker falls on after the catch", () => {
    const event: WhatIf = { kind: "mainFails", at: 0.95, cutAt: 0, walker: "hanging" };
    const atUsual = recorded(testRig, event, usual);
    const settled = recorded(testRig, event);
    expect(settled.duration).toBeGreaterThan(usual);
    expect(settled.walker.drop).toBeGreaterThan(1.02 * atUsual.walker.drop);
    // And what comes after is no deeper by much.
    const long = recorded(testRig, event, 3.5 * usual);
    expect(long.walker.drop).toBeLessThan(1.05 * settled.walker.drop);
  });

  it("comes soon after a catch that is over, at a low point that is not the deepest", () => {
    const { duration, walker, walkerHeight, rate } = recorded(testRig, { kind: "leashFall", at: 0.5 });
    expect(duration).toBeLessThan(usual);
    expect(duration).toBeGreaterThan(walker.lowestTime + 1);
    const last = walkerHeight.subarray(-Math.round(0.5 * rate));
    expect(Math.min(...last)).toBeGreaterThan(walker.lowest);
  });

  it("changes nothing of what was before it", () => {
    const event: WhatIf = { kind: "leashFall", at: 0.5 };
    const settled = recorded(testRig, event);
    const long = recorded(testRig, event, 2 * usual);
    expect(long.signals.leash.subarray(0, settled.signals.leash.length)).toEqual(settled.signals.leash);
  });

  it("does not give up a walker whom a loose backup catches late", () => {
    const { backup } = testRig;
    const loose = { ...testRig, backup: { ...backup!, slack: 0.2, connections: [], tapes: [] } };
    const settled = recorded(loose, { kind: "mainFails", at: 0.5, cutAt: 0.5, walker: "hanging" });
    const long = recorded(loose, { kind: "mainFails", at: 0.5, cutAt: 0.5, walker: "hanging" }, 3 * usual);
    expect(settled.walker.drop).toBeGreaterThan(8);
    expect(settled.walker.drop).toBeCloseTo(long.walker.drop, 1);
    // The walker bounces nearly as high as the lines were, and is caught again on the coarser mesh.
    expect(settled.peaks.leash.cfc60 / long.peaks.leash.cfc60).toBeGreaterThan(0.95);
    expect(settled.peaks.leash.cfc60 / long.peaks.leash.cfc60).toBeLessThan(1.05);
  });
});

/** A run of which only what `Settling` looks at is there: a walker who swings, lower by little each time, with the ring at a place. */
class Swings {
  time = 0;
  readonly problem = { span: 60, rise: 0, leash: { length: 1.5 }, walker: { tieIn: 1 } };
  readonly model = {
    main: { naturalLength: 60 },
    backup: { naturalLength: 60, fractions: [0, 0.5, 1] },
    joints: [{ kind: "connection", backup: 1 }],
  };
  readonly events: readonly { readonly kind: string; readonly part: string }[];
  readonly recorder = { channels: Array.from({ length: 8 }, () => new Float32Array(0)), samples: 0 };
  readonly #ring: number;
  readonly #range: number;

  /** `ring`: along both lines [m]; `failed`: what has failed; `range`: how far the ring moves along them in a swing [m]. */
  constructor(ring: number, failed: string, range: number) {
    this.#ring = ring;
    this.#range = range;
    this.events = [{ kind: "cut", part: failed }];
  }

  /** A swing takes 2 s; each is a little less deep than the one before [m]. */
  get walkerHeight(): number {
    return -10 - (2 - 0.02 * this.time) * Math.cos(Math.PI * (this.time + 1));
  }
  get lowestTime(): number {
    return Math.min(this.time, 1);
  }
  get ringAt(): readonly [number, number] {
    const at = (this.#ring + 0.5 * this.#range * Math.sin(Math.PI * this.time)) / 60;
    return [at, at];
  }
}

/** After how many low points it is over, of at most twelve. */
function lowsUntilOver(ring: number, failed: string, { usual = 2, range = 0 } = {}): number {
  const run = new Swings(ring, failed, range);
  const settling = new Settling(run as unknown as Simulation, { from: 0, usual, most: 100 });
  let lows = 0;
  let last = run.walkerHeight;
  let fell = false;
  for (let k = 1; k <= 2400; k++) {
    run.time = 0.01 * k;
    const now = run.walkerHeight;
    if (fell && now > last) lows++;
    fell = now < last;
    last = now;
    if (settling.over()) return lows;
  }
  return Number.POSITIVE_INFINITY;
}

describe("a ring that hangs beside a connection of a line that has parted", () => {
  it("is waited for as long as it moves so far in a swing that it may slip past", () => {
    expect(lowsUntilOver(28, "main", { range: 0.6 })).toBe(Number.POSITIVE_INFINITY);
    expect(lowsUntilOver(28, "main", { range: 0.4 })).toBeLessThanOrEqual(3);
    expect(lowsUntilOver(20, "main", { range: 1.2 })).toBeLessThanOrEqual(3);
  });

  it("is waited for at the connection itself, however little it moves", () => {
    expect(lowsUntilOver(29.6, "main")).toBe(Number.POSITIVE_INFINITY);
    expect(lowsUntilOver(29.4, "main")).toBeLessThanOrEqual(3);
  });

  it("is not waited for where both lines are whole", () => {
    expect(lowsUntilOver(29.6, "anchorA")).toBe(lowsUntilOver(15, "anchorA"));
    expect(lowsUntilOver(28, "anchorA", { range: 0.6 })).toBe(lowsUntilOver(15, "anchorA"));
  });
});

describe("the mesh of a run", () => {
  /** How much coarser it may be, over time, each value once [-], and when it first may be [s]. */
  function coarserOver(failed: string, ring: number, range = 0.6) {
    const run = new Swings(ring, failed, range);
    const settling = new Settling(run as unknown as Simulation, { from: 0, usual: 2, most: 100 });
    const all: { coarser: number | undefined; time: number; height: number }[] = [];
    for (let k = 1; k <= 1200; k++) {
      run.time = 0.01 * k;
      if (settling.over()) break;
      const coarser = settling.coarser();
      if (all.length === 0 || coarser !== all.at(-1)!.coarser)
        all.push({ coarser, time: run.time, height: run.walkerHeight });
    }
    return all;
  }

  it("gives up a tail's short elements once it has whipped, and gets coarser at high points, more once all is calm", () => {
    const all = coarserOver("main", 28);
    expect(all.map(({ coarser }) => coarser).slice(0, 6)).toEqual([undefined, 1, 1.5, 1, 2, 1]);
    expect(all[1]!.time).toBeGreaterThan(1.5);
    for (const { coarser, height } of all) if (coarser === 1.5 || coarser === 2) expect(height).toBeGreaterThan(-8.3);
  });

  it("stays as fine where both lines are whole: a slack backup whips beside the line", () => {
    expect(new Set(coarserOver("anchorA", 28).map(({ coarser }) => coarser))).toEqual(new Set([undefined, 1]));
  });

  it("begins anew when something gives way", () => {
    const run = new Swings(28, "main", 0.6);
    const settling = new Settling(run as unknown as Simulation, { from: 0, usual: 2, most: 100 });
    const until = (time: number) => {
      for (; run.time < time; run.time += 0.01) settling.over();
    };
    until(3);
    expect(settling.coarser()).toBe(1);
    Object.assign(run, { events: [...run.events, { kind: "break", part: "connection" }] });
    until(3.1);
    expect(settling.coarser()).toBeUndefined();
    until(4);
    expect(settling.coarser()).toBeUndefined();
  });
});

describe("a run that is shown", () => {
  it("is the one that a search made, on every mesh, where nothing gave way that the event does not say", () => {
    const meshes = vi.spyOn(Simulation.prototype, "goOn");
    const event: WhatIf = { kind: "mainFails", at: 0.3, cutAt: 0, walker: "hanging" };
    const deep = { ...testRig, ground: [] };
    const shown = finish(showWhatIf(deep, strengths, event, { accuracy: "quick" }));
    const went = meshes.mock.results.map(({ value }) => value);
    const searched = finish(executeRun(deep, strengths, { event, draw: NO_DRAW, accuracy: "quick" }));
    if (!searched.ok || !shown.outcome.ok) throw new Error("no run");
    expect(went).toContain(true);
    expect(meshes.mock.results.map(({ value }) => value)).toEqual([...went, ...went]);
    expect(shown.outcome.gaveWay).toEqual([]);
    expect(shown.outcome.peaks).toEqual(searched.peaks);
    expect(shown.outcome.drop).toBe(searched.drop);
    vi.restoreAllMocks();
  });
});

describe("small swings at the beginning", () => {
  it("say nothing of what is to come: half of the usual time goes by first", () => {
    expect(lowsUntilOver(15, "main", { usual: 20 })).toBeGreaterThan(lowsUntilOver(15, "main") + 1);
  });
});

describe("a walker in free flight", () => {
  /** Falls from rest, from a height above anchor A, for so long. */
  const flight = (from: number, seconds: number) =>
    Float32Array.from(
      { length: Math.round(seconds * SIGNAL_RATE) },
      (_, i) => from - 0.5 * 9.80665 * (i / SIGNAL_RATE) ** 2,
    );

  it("is not given up where the lines still reach: it may be the way down from a bounce", () => {
    expect(fallsFreely(flight(-15, 1.6), -120)).toBe(false);
  });

  it("is given up below all that lines and leash reach", () => {
    expect(fallsFreely(flight(-110, 1.6), -120)).toBe(true);
  });

  it("is not given up down there while something slows the fall", () => {
    const held = flight(-130, 1.6).map((height, i) => height + 0.1 * 9.80665 * (i / SIGNAL_RATE) ** 2);
    expect(fallsFreely(held, -120)).toBe(false);
  });
});
