/** A rescue: a second person hangs beside the walker, each on a leash and ring of an own. */
import { solveStanding } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import type { GoodRun } from "../src/facts/runFacts.ts";
import {
  assessRig,
  classOf,
  executeRun,
  missingIn,
  noChances,
  parseWhatIf,
  rigStrengths,
  runWhatIf,
  whatIfKey,
  whatIfSet,
} from "../src/index.ts";
import { toProblem } from "../src/run/toProblem.ts";
import { drawn } from "../src/scatter/draw.ts";
import { demandStrengths } from "../src/strengths/demandStrengths.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const GRAVITY = 9.80665;
const withRescuer = (rescuer: number, mass = testRig.walker.mass): Rig => ({
  ...testRig,
  walker: { ...testRig.walker, mass, rescuer },
});
const rig = withRescuer(testRig.walker.mass);

function run(of: Rig, key: string): GoodRun {
  const order = { event: parseWhatIf(key)!, draw: {}, accuracy: "quick" } as const;
  const result = finish(executeRun(of, rigStrengths(of, []), order));
  if (!result.ok) throw new Error(JSON.stringify(result.trouble));
  return result;
}

describe("two persons at rest", () => {
  const atRest = run(rig, "rescue@0.5");

  it("pull the line as one with both masses does", () => {
    const alone = toProblem(rig, parseWhatIf("fall@0.5")!, demandStrengths(rig, rigStrengths(rig, [])));
    const rings = 2 * rig.rings.reduce((sum, ring) => sum + ring.mass, 0);
    const both = solveStanding({ ...alone, walker: { ...alone.walker, mass: 2 * rig.walker.mass + rings } });
    if (!both.ok) throw new Error(both.message);
    // The hanging leashes have weight too: 0.2 % of both persons'.
    expect(atRest.peaks.mainA / both.standing.tension).toBeCloseTo(1, 2);
    expect(atRest.peaks.mainB).toBeCloseTo(atRest.peaks.mainA, 0);
    expect(atRest.drop).toBeLessThan(0.01);
    expect(atRest.caughtBy).toBe("main");
  });

  it("weigh on their own leash, ring and harness each", () => {
    for (const part of ["leash", "harness", "ring"] as const) {
      expect(atRest.loads[part]! / (rig.walker.mass * GRAVITY)).toBeCloseTo(1, 2);
    }
  });

  it("count by the heavier one where a leash is asked", () => {
    const unequal = run(withRescuer(100, 60), "rescue@0.5");
    expect(unequal.loads.leash! / (100 * GRAVITY)).toBeCloseTo(1, 2);
    expect(unequal.peaks.mainA).toBeCloseTo(atRest.peaks.mainA, -1);
  });

  it("are held by the line though they slide down it beside an anchor", () => {
    expect(run(rig, "rescue@0.05")).toMatchObject({ caughtBy: "main" });
  });
});

describe("a main line that fails under two persons", () => {
  const two = run(rig, "rescue/fails@0,hanging@0.5");

  it("leaves the backup more to catch than one person does", () => {
    const one = run(rig, "fails@0,hanging@0.5");
    const hardest = ({ peaks }: GoodRun) => Math.max(peaks.backupA, peaks.backupB);
    expect(hardest(two)).toBeGreaterThan(hardest(one));
    expect(two.caughtBy).toBe("backup");
  });

  it("is the fall of one with both masses, on both leashes and both rings", () => {
    const [ring] = rig.rings;
    const double = (pairs: readonly (readonly [number, number])[], which: 0 | 1) =>
      pairs.map(([a, b]) => (which === 0 ? ([2 * a, b] as const) : ([a, 2 * b] as const)));
    const stock = rig.leash.stock;
    const asOne: Rig = {
      ...rig,
      walker: { ...rig.walker, mass: 2 * rig.walker.mass },
      rings: [{ ...ring!, mass: 2 * ring!.mass }],
      leash: {
        ...rig.leash,
        stock: { ...stock, mass: 2 * stock.mass, curve: double(stock.curve, 1), branches: double(stock.branches, 0) },
      },
    };
    const one = run(asOne, "fails@0,hanging@0.5");
    expect(two.peaks).toEqual({ ...one.peaks, leash: one.peaks.leash / 2 });
    expect(two.drop).toBe(one.drop);
  });

  it("is shown with the leash of one of them", () => {
    const options = { accuracy: "quick" } as const;
    const shown = finish(runWhatIf(assessRig(rig), parseWhatIf("rescue/fails@0,hanging@0.5")!, options));
    const { signals, peaks } = shown.recording!;
    expect(signals.leash.reduce((a, b) => Math.max(a, b))).toBeCloseTo(peaks.leash.raw, 0);
    expect(peaks.leash.cfc60).toBe(shown.outcome.peaks!.leash);
  });
});

describe("a rescue as a question", () => {
  const setOf = (of: Rig) => whatIfSet({ rig: of, weakPlaces: [], size: "full" });
  const rescues = setOf(rig).filter(({ kind }) => kind === "rescue");

  it("is asked where the rig says who would come, and nowhere else", () => {
    expect(setOf(testRig).some(({ kind }) => kind === "rescue")).toBe(false);
    expect(missingIn(parseWhatIf("rescue@0.5")!, testRig)?.key).toBe("missing.rescuer");
    expect(rescues.length).toBeGreaterThan(10);
    expect(rescues.filter((event) => missingIn(event, rig))).toEqual([]);
    expect(setOf(testRig)).toEqual(setOf(rig).filter(({ kind }) => kind !== "rescue"));
  });

  it("has keys that are read back as they were written", () => {
    for (const event of rescues) expect(parseWhatIf(whatIfKey(event))).toEqual(event);
    expect(parseWhatIf("gives@endA/rescue/fails@1,hanging@0.5")).toMatchObject({ during: { kind: "rescue" } });
    for (const key of ["rescue", "rescue@0", "rescue@1", "rescue/fall@0.5", "rescue/fails@0,standing@0.5", "rescue/"]) {
      expect(parseWhatIf(key)).toBeUndefined();
    }
  });

  it("asks of parts what is expected of them at rest, and after a failure what is required then", () => {
    expect(new Set(rescues.map((event) => `${classOf(event)} ${whatIfKey(event).includes("/")}`))).toEqual(
      new Set(["expected false", "afterFailure true"]),
    );
  });

  it("is drawn with both persons as much heavier or lighter", () => {
    expect(drawn(rig, rescues[0]!, { mass: 1.1 }).rig.walker).toMatchObject({ mass: 88, rescuer: 88 });
  });

  it("has no chances without a backup where the main line fails", () => {
    const { backup: _, ...bare } = rig;
    expect(noChances(assessRig(bare), parseWhatIf("rescue/fails@0,hanging@0.5")!)).toEqual({ kind: "noBackup" });
  });
});
