import { describe, expect, it } from "vitest";
import { type Problem, readProblem } from "../src/index.ts";
import { CUT, FALL, run, webbing } from "./rigs.ts";

const breaks = (problem: Problem) => run(problem).events.filter(({ kind }) => kind === "break");

describe("connections", () => {
  it("part one after another from the cut on, like a zipper, and the run goes on", () => {
    const zipper = {
      ...CUT,
      backup: {
        ...CUT.backup!,
        connections: [0.2, 0.35, 0.6, 0.8].map((at) => ({ at, strength: 900 })),
      },
      walker: { ...CUT.walker, at: 0.5 },
    };
    const parted = breaks(zipper).filter(({ part }) => part === "connection");
    expect(parted.length).toBeGreaterThanOrEqual(3);
    const left = parted.filter(({ at }) => at! < 0.5);
    expect(left.map(({ at }) => at)).toEqual([0.2, 0.35]);
    for (const { value } of parted) expect(value).toBeGreaterThan(900);
    const { connections } = run(zipper);
    for (const { at, parted: is } of connections) expect(is).toBe(parted.some((event) => event.at === at));
  });

  it("that hold put less on the walker than none at all", () => {
    const loose = run({ ...CUT, backup: { ...CUT.backup!, connections: [] } });
    const held = run(CUT);
    expect(held.peaks.leash.cfc60).toBeLessThan(loose.peaks.leash.cfc60);
    expect(held.walker.drop).toBeLessThan(loose.walker.drop);
  });
});

describe("tapes", () => {
  const tapes = [0.2, 0.4, 0.6, 0.8].map((at) => ({ at: at + 0.03, strength: 250 }));
  it("carry the slack backup at rest and give way in a catch", () => {
    const taped = { ...CUT, backup: { ...CUT.backup!, tapes } };
    const still = run({ ...taped, cut: { at: 0, time: 1.9 }, duration: 1.5 });
    expect(still.connections.filter(({ tape, parted }) => tape && parted)).toEqual([]);
    const parted = breaks(taped).filter(({ part }) => part === "tape");
    expect(parted.length).toBeGreaterThan(0);
    for (const { value } of parted) expect(value).toBeGreaterThan(250);
  });
});

describe("a weak zone", () => {
  it("parts first, and within the zone", () => {
    const weak: Problem = {
      ...FALL,
      main: { ...FALL.main, strength: 30_000, weakZones: [{ from: 0.71, to: 0.74, strength: 4500 }] },
    };
    const [first] = breaks(weak);
    expect(first!.part).toBe("main");
    expect(first!.at).toBeGreaterThan(0.71);
    expect(first!.at).toBeLessThan(0.74);
    expect(first!.value).toBeGreaterThan(4500);
    expect(run(weak).walker.drop).toBeGreaterThan(run(FALL).walker.drop);
  });

  it("that is strong enough changes nothing but the mesh", () => {
    const strong = run({
      ...FALL,
      main: { ...FALL.main, strength: 30_000, weakZones: [{ from: 0.7, to: 0.8, strength: 20_000 }] },
    });
    expect(strong.firstBreak).toBeUndefined();
    expect(Math.abs(strong.walker.drop / run(FALL).walker.drop - 1)).toBeLessThan(0.01);
  });
});

describe("the leash or the ring parting", () => {
  for (const [part, weak] of [
    ["leash", { leash: { ...FALL.leash, strength: 2000 } }],
    ["ring", { ring: { ...FALL.ring, strength: 2000 } }],
  ] as const) {
    it(`${part}: the walker then falls on an exact parabola, and the line carries no walker`, () => {
      const { events, walkerHeight, rate, signals, firstBreak } = run({ ...FALL, ...weak, duration: 3 });
      expect(firstBreak?.part).toBe(part);
      expect(events.filter(({ kind }) => kind === "break")).toHaveLength(1);
      // A step of the quick mesh is some samples long.
      const from = Math.ceil(firstBreak!.time * rate) + 10;
      const gap = 5000;
      for (let k = from; k + 2 * gap < walkerHeight.length; k += 500) {
        const bend = walkerHeight[k + 2 * gap]! - 2 * walkerHeight[k + gap]! + walkerHeight[k]!;
        // Heights are kept in single precision.
        expect(bend / (gap / rate) ** 2).toBeCloseTo(-9.80665, 4);
      }
      expect(Math.max(...signals.leash.subarray(from))).toBe(0);
    });
  }
});

describe("a cut main line", () => {
  it("cannot push on the backup: no element ever carries less than nothing", () => {
    const { frames, signals } = run(CUT);
    for (const T of frames.tensions) expect(Number.isNaN(T) || T >= 0).toBe(true);
    expect(Math.max(...signals.mainA.subarray(510))).toBe(0);
  });

  it("lets the ring run off its end, for good", () => {
    const { events, frames, peaks } = run({
      ...CUT,
      backup: { ...CUT.backup!, connections: [] },
      cut: { at: 0.43, time: 0.05 },
      ring: { ...CUT.ring, friction: 0.02 },
    });
    const off = events.find(({ kind }) => kind === "ringOff");
    expect(off?.part).toBe("main");
    const frame = Math.ceil(off!.time * frames.rate) + 1;
    for (let f = frame; f < frames.count; f++) expect(frames.ringAt[2 * f]).toBe(-1);
    expect(Math.max(peaks.backupA.cfc60, peaks.backupB.cfc60)).toBeGreaterThan(3000);
  });

  it("gives the same catch whichever end is cut, seen in the mirror", () => {
    const here = run({ ...CUT, walker: { ...CUT.walker, at: 0.5 } });
    const there = run({ ...CUT, walker: { ...CUT.walker, at: 0.5 }, cut: { at: 1, time: 0.05 } });
    // A slack end is sensitive to rounding: one catch differs from another by up to 15 %; the drop less so than the peaks.
    expect(Math.abs(there.walker.drop / here.walker.drop - 1)).toBeLessThan(0.02);
    expect(Math.abs(there.peaks.leash.cfc60 / here.peaks.leash.cfc60 - 1)).toBeLessThan(0.15);
  });

  it("without a backup lets the walker fall, and the run says so", () => {
    const { backup: _, ...bare } = CUT;
    const { walker, events } = run({ ...bare, walker: { ...CUT.walker, at: 0.5 }, duration: 1.5 });
    expect(walker.drop).toBeGreaterThan(4);
    expect(events.map(({ kind }) => kind)).toContain("cut");
  });
});

describe("the ground", () => {
  it("ends the run when the walker reaches it, at √(2·g·h) after a free fall", () => {
    const depth = 6;
    const problem: Problem = {
      ...FALL,
      leash: { ...FALL.leash, length: 40 },
      walker: { ...FALL.walker, lateral: 1 },
      letGo: 0,
      ground: [
        [-5, -depth],
        [25, -depth],
      ],
    };
    const { events, duration, walker, frames } = run(problem);
    const ground = events.find(({ kind }) => kind === "ground")!;
    const height = walker.start + depth;
    expect(ground.value! / Math.sqrt(2 * 9.80665 * height)).toBeCloseTo(1, 3);
    expect(ground.time).toBeCloseTo(Math.sqrt((2 * height) / 9.80665), 3);
    expect(duration).toBeCloseTo(ground.time, 3);
    // Rows of frames are found by their number: an early end must leave no room behind.
    const { count, mainNodes, backupNodes, tensions, positions } = frames;
    expect(tensions).toHaveLength(count * (mainNodes - 1 + Math.max(0, backupNodes - 1)));
    expect(positions).toHaveLength(count * 3 * (mainNodes + backupNodes + 2));
    expect(duration).toBeLessThan(problem.duration);
  });

  it("lies where its profile says under the walker", () => {
    const problem: Problem = {
      ...FALL,
      leash: { ...FALL.leash, length: 40 },
      letGo: 0,
      ground: [
        [0, 0],
        [10, -8],
        [20, 0],
      ],
    };
    expect(run(problem).events.find(({ kind }) => kind === "ground")!.position![2]).toBeCloseTo(-8, 1);
  });
});

describe("a problem of all that can fail", () => {
  it("is one the reader takes", () => {
    const reading = readProblem({
      ...CUT,
      main: { ...CUT.main, strength: 25_000, slip: { A: 8000 }, weakZones: [{ from: 0.1, to: 0.2, strength: 9000 }] },
      backup: { ...CUT.backup!, material: webbing(0.05, 0.03), tapes: [{ at: 0.3, strength: 300 }] },
      anchors: { A: { stiffness: 1e5 } },
      ground: [
        [0, -50],
        [20, -50],
      ],
    });
    expect(reading.ok ? [] : reading.issues).toEqual([]);
  });
});
