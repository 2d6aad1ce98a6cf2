import { describe, expect, it } from "vitest";
import { rigStrengths } from "../src/index.ts";
import { toProblem } from "../src/run/toProblem.ts";
import { demandStrengths } from "../src/strengths/demandStrengths.ts";
import { testRig } from "./testRig.ts";

const strengths = rigStrengths(testRig);
const problem = (whatIf: Parameters<typeof toProblem>[1], options = {}) =>
  toProblem(testRig, whatIf, strengths.breaking, options);

describe("the engine's problem for a what-if", () => {
  it("starts a leash fall standing, with feet that let go and nothing cut", () => {
    const fall = problem({ kind: "leashFall", at: 0.3 });
    expect(fall.start).toBe("standing");
    expect(fall.letGo).toBeGreaterThan(0);
    expect(fall.cut).toBeUndefined();
    expect(fall.walker.at).toBe(0.3);
  });

  it("cuts the line under a hanging walker who has no feet on it", () => {
    const fails = problem({ kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" });
    expect(fails.start).toBe("hanging");
    expect(fails.letGo).toBeUndefined();
    expect(fails.cut?.at).toBe(0);
  });

  it("cuts during a catch at the time it is given, and not without one", () => {
    const caught = { kind: "mainFails", at: 0.5, cutAt: 1, walker: "caught" } as const;
    expect(problem(caught, { catchTime: 1.2 }).cut).toEqual({ at: 1, time: 1.2 });
    expect(problem({ ...caught, late: -0.01 }, { catchTime: 1.2 }).cut!.time).toBeCloseTo(1.19, 12);
    expect(() => problem(caught)).toThrow();
  });

  it("keeps tapes and connections apart, each with its strength", () => {
    const { backup } = problem({ kind: "leashFall", at: 0.5 });
    expect(backup?.connections?.map((one) => one.at)).toEqual([0.5]);
    expect(backup?.tapes?.map((one) => one.at)).toEqual([0.25, 0.75]);
    expect(backup!.connections![0]!.strength).toBeGreaterThan(backup!.tapes![0]!.strength!);
  });

  it("lets the line part at its weak zones and in its ends", () => {
    const worn = {
      ...testRig,
      main: {
        ...testRig.main,
        sections: [
          { ...testRig.main.sections[0]!, wear: [{ kind: "clampMark", at: 20, length: 0.3, months: 12 } as const] },
        ],
      },
    };
    const { main } = toProblem(worn, { kind: "leashFall", at: 0.5 }, rigStrengths(worn).breaking);
    const mark = main.weakZones!.find((zone) => zone.from < 20 / 57.6 && zone.to > 20 / 60)!;
    expect(mark.strength).toBeLessThan(0.8 * main.strength!);
    expect(main.weakZones!.some((zone) => zone.from === 0)).toBe(true);
    expect(main.weakZones!.some((zone) => zone.to === 1)).toBe(true);
  });

  it("knots the leash: it parts below the strength of its rope", () => {
    const { leash } = problem({ kind: "leashFall", at: 0.5 });
    expect(leash.strength).toBeLessThan(0.75 * testRig.leash.stock.rated.strength);
  });

  it("adds the masses of two rings and keeps the tighter clearance", () => {
    const two = { ...testRig, rings: [testRig.rings[0]!, { ...testRig.rings[0]!, name: "Second", clearance: 0.04 }] };
    const { ring } = toProblem(two, { kind: "leashFall", at: 0.5 }, rigStrengths(two).breaking);
    expect(ring.mass).toBeCloseTo(0.2);
    expect(ring.clearance).toBe(0.025);
  });

  it("simulates longer on a long line with a slack backup", () => {
    const short = problem({ kind: "leashFall", at: 0.5 }).duration;
    const long = { ...testRig, span: 400 };
    expect(short).toBeGreaterThanOrEqual(4);
    expect(toProblem(long, { kind: "leashFall", at: 0.5 }, rigStrengths(long).breaking).duration).toBeGreaterThan(
      short,
    );
  });

  it("has no last bits in which browsers may differ: nine digits of every number, and endless strengths as they are", () => {
    const bits = (rig: typeof testRig) =>
      JSON.stringify(toProblem(rig, { kind: "leashFall", at: 1 / 3 }, rigStrengths(rig).breaking));
    const nudged = { ...testRig, main: { ...testRig.main, pretension: testRig.main.pretension * (1 + 2e-16) } };
    expect(bits(nudged)).toBe(bits(testRig));
    expect(problem({ kind: "leashFall", at: 1 / 3 }).walker.at).toBe(0.333333333);
    const whole = demandStrengths(testRig, strengths);
    expect(toProblem(testRig, { kind: "leashFall", at: 0.5 }, whole).leash.strength).toBe(Number.POSITIVE_INFINITY);
  });
});
