import { readFileSync } from "node:fs";
import { judgePart, type Rig, readRig } from "@secondline/rig";
import { beforeAll, describe, expect, it } from "vitest";
import type { GoodRun } from "../src/facts/runFacts.ts";
import {
  assessRig,
  type Chances,
  ChancesImpossible,
  type ChancesOptions,
  chances,
  rigStrengths,
  Sampler,
  type Spreads,
  type StudyProgress,
  study,
  uncertainInputs,
  type WhatIf,
} from "../src/index.ts";
import { medianLoads } from "../src/reliability/drawnRuns.ts";
import { likelyFirst } from "../src/reliability/likelyFirst.ts";
import {
  droppedStretches,
  type LoadedPart,
  loadedParts,
  loadsIn,
  worthKeeping,
} from "../src/reliability/loadedParts.ts";
import { executeRun } from "../src/run/executeRun.ts";
import { drawn, NO_DRAW } from "../src/scatter/draw.ts";
import { placeRange } from "../src/scatter/inputs.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const fall: WhatIf = { kind: "leashFall", at: 0.5 };
const fails: WhatIf = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" };
/** Everything known but the walker's mass, the leash, and how the feet let go. */
const FEW: Spreads = {
  place: 0,
  pretension: 0,
  stiffness: 0,
  backupStiffness: 0,
  damping: 0,
  slack: 0,
  friction: 0,
};
const worked = (rig: Rig, options: ChancesOptions, seen: StudyProgress[] = []) =>
  finish(chances(assessRig(rig), { runs: 16, seed: 7, accuracy: "quick", ...options }), seen);

function demoRig(name: string): Rig {
  const reading = readRig(readFileSync(new URL(`../../../demo-data/${name}.json`, import.meta.url), "utf8"));
  if (!reading.ok) throw new Error(`${name} has faults`);
  return reading.rig;
}

describe("the chances of the old demonstration rig, in a fall by its clamp mark", () => {
  const old = demoRig("old-rig");
  const whatIf: WhatIf = { kind: "leashFall", at: 0.05 };
  const seen: StudyProgress[] = [];
  let found: Chances;
  beforeAll(() => {
    found = worked(old, { whatIf, runs: 32 }, seen);
  }, 240_000);

  it("put first the part that a study finds to have the least margin, at the same place", () => {
    const { outcome } = finish(study(assessRig(old), { accuracy: "quick", whatIfs: [whatIf] }));
    expect(outcome.firstToFail).toBe("main");
    expect(found.parts[0]!.id).toBe("main");
    expect(found.parts[0]!.stretch!.reason).toBe("clamp mark");
    expect(outcome.parts.find((part) => part.id === "main")!.weakest!.at).toBeCloseTo(
      (found.parts[0]!.stretch!.from + found.parts[0]!.stretch!.to) / 2,
      0,
    );
    expect(found.parts[0]!.first.value).toBeGreaterThan(0.8);
  });

  it("are small for every part that holds twice what the first one does", () => {
    const margin = ({ strength, load }: Chances["parts"][number]) => strength / load;
    const far = found.parts.filter((part) => margin(part) > 2 * margin(found.parts[0]!));
    expect(far.length).toBeGreaterThan(5);
    for (const part of far) expect([part.id, part.first.value < 0.02]).toEqual([part.id, true]);
  });

  it("add up to one, each within its interval", () => {
    expect(found.parts.reduce((sum, part) => sum + part.first.value, 0)).toBeCloseTo(1, 9);
    for (const { first, fails: failing } of found.parts) {
      for (const { value, low, high } of [first, failing]) {
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
      }
    }
  });

  it("are never smaller for any part than for one", () => {
    for (const { fails: failing } of found.parts) {
      for (const end of ["value", "low", "high"] as const) {
        expect(found.anyFails[end]).toBeGreaterThanOrEqual(failing[end]);
      }
    }
  });

  it("name every uncertain input with its spread and its basis, and what they rest on", () => {
    expect(found.inputs.map((input) => input.id)).toEqual(
      expect.arrayContaining(["mass", "place", "stiffness", "damping", "slack", "leashLength"]),
    );
    for (const { basis, spread } of found.inputs) {
      expect(basis.kind).toBe("assumed");
      expect(spread).toBeGreaterThan(0);
    }
    expect(found.invented).toBe(true);
    expect(found.shares).toMatchObject({ part: "main", reason: "clamp mark" });
    const { sources } = found.shares;
    expect(sources.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["input", "chance", "strength"]));
    expect(sources.reduce((sum, { share }) => sum + share.value, 0)).toBeCloseTo(1, 9);
  });

  it("come with progress that only rises", () => {
    const done = seen.map((one) => one.done);
    expect([...done].sort((a, b) => a - b)).toEqual(done);
    expect(seen[0]!.doing).toEqual(whatIf);
  });
});

describe("chances", () => {
  let found: Chances;
  beforeAll(() => {
    found = worked(testRig, { whatIf: fall, spreads: FEW });
  }, 240_000);

  it("are the same for the same seed, and so is the hash of what was put in", () => {
    const again = worked(testRig, { whatIf: fall, spreads: FEW });
    expect(again).toEqual(found);
  }, 240_000);

  it("of another seed are of other draws, by the same method, within their interval", () => {
    const other = worked(testRig, { whatIf: fall, spreads: FEW, seed: 8 });
    expect(Object.keys(other)).toEqual(Object.keys(found));
    expect(other.anyFails.value).toBeLessThan(found.anyFails.high);
    expect(other.anyFails.value).toBeGreaterThan(found.anyFails.low);
    expect(other.parts).not.toEqual(found.parts);
    expect(other.inputHash).not.toBe(found.inputHash);
  }, 240_000);

  it("know only the inputs that were left uncertain", () => {
    const names = ["Walker's mass", "Time in which the feet let go", "Stiffness of the leash", "Length of the leash"];
    expect(found.inputs.map((input) => input.name)).toEqual(names);
    const inputs = found.shares.sources.filter(({ kind }) => kind === "input");
    expect(inputs.map(({ name }) => name).sort()).toEqual([...names].sort());
  });

  it("are of loads that a part would have to carry, though it breaks under them", () => {
    const { rated } = testRig.leash.stock;
    const weak: Rig = {
      ...judgePart(testRig, "ring", { factor: 1.2, reason: "own pulls" })!,
      ground: [],
      leash: { ...testRig.leash, stock: { ...testRig.leash.stock, rated: { ...rated, strength: 2000 } } },
    };
    const load = (of: Chances) => of.parts.find((part) => part.id === "leash")!.load;
    const broken = worked(weak, { whatIf: fall, spreads: FEW });
    expect(load(broken)).toBeGreaterThan(broken.parts[0]!.strength);
    expect(load(broken)).toBe(load(found));
    expect(broken.parts[0]!.id).toBe("leash");
    expect(broken.anyFails.value).toBeGreaterThan(0.95);
    // What the numbers themselves hide is told beside them.
    expect(broken.judged).toMatchObject([{ part: "ring", own: true, value: 1.2 }]);
    expect(broken.groundKnown).toBe(false);
    expect(found.judged).toEqual([]);
    expect(found.groundKnown).toBe(true);
  }, 240_000);

  it("are refused when there is no backup and the main line fails: no strength helps then", () => {
    const { backup: _, ...alone } = testRig;
    const refused = () => worked(alone, { whatIf: fails });
    expect(refused).toThrow(ChancesImpossible);
    expect(refused).toThrow(expect.objectContaining({ why: { kind: "noBackup" } }));
  });

  it("count the draws that end on the ground, and take loads as if it were not there", () => {
    const at = (z: number): Rig => ({ ...testRig, ground: testRig.ground.map(([x]) => [x, z] as const) });
    const [low, deep] = [at(-5), at(-40)].map((rig) => worked(rig, { whatIf: fails, spreads: FEW }));
    expect(low!.runs.ground.count).toBeGreaterThan(0);
    expect(low!.runs.ground.chance.low).toBeGreaterThan(0);
    expect(deep!.runs.ground).toMatchObject({ count: 0, chance: { value: 0, low: 0 } });
    expect(deep!.runs.ground.chance.high).toBeGreaterThan(0.1);
    expect(low!.parts).toEqual(deep!.parts);
  }, 240_000);

  it.each([15, 513, 30.5])("refuse %d runs", (runs) => {
    expect(() => worked(testRig, { whatIf: fall, runs })).toThrow(/Runs must be a whole number from 16 to 512, got/);
  });
});

describe("the glance that a verdict gives", () => {
  it("is the same model of the same draws: it names the same parts first, as often", () => {
    const strengths = rigStrengths(testRig);
    const samples = new Sampler(testRig, { seed: 7, spreads: FEW }).draws(fall, 0, 16);
    const runs = samples.map(
      ({ draw }) => finish(executeRun(testRig, strengths, { event: fall, draw, accuracy: "quick" })) as GoodRun,
    );
    const event = { index: 3, event: fall, runs, deviates: samples.map(({ deviates }) => deviates) };
    const glance = likelyFirst(testRig, strengths, event, 7);
    const whole = worked(testRig, { whatIf: fall, spreads: FEW });
    expect(glance.whatIf).toBe(3);
    expect(glance.parts[0]!.id).toBe(whole.parts[0]!.id);
    for (const { id, first, fails: failing } of glance.parts) {
      const same = whole.parts.find((part) => part.id === id)!;
      expect(Math.abs(first.value - same.first.value)).toBeLessThan(0.03);
      expect(failing.value).toBeGreaterThanOrEqual(same.fails.low);
      expect(failing.value).toBeLessThanOrEqual(same.fails.high);
    }
  }, 60_000);
});

describe("uncertain inputs", () => {
  it("take the spread that is given, say that it was, and leave out those of no spread", () => {
    const inputs = uncertainInputs(testRig, fall, { mass: 0.03, slack: 0 });
    expect(inputs.find((input) => input.id === "mass")).toMatchObject({ spread: 0.03, central: 80 });
    expect(inputs.find((input) => input.id === "mass")!.basis.note).toContain("given");
    expect(inputs.some((input) => input.id === "slack")).toBe(false);
  });

  it("refuse a spread that makes no sense, by name", () => {
    expect(() => uncertainInputs(testRig, fall, { damping: -0.1 })).toThrow(/spread of damping .* got -0.1/);
  });

  it("leave the rig as it is where nothing is drawn, and never drop the walker onto an anchor", () => {
    const centre = drawn(testRig, fall, NO_DRAW);
    expect(centre.event).toEqual(fall);
    expect(centre.rig).toEqual(testRig);
    const near: WhatIf = { kind: "leashFall", at: 0.04 };
    const place = uncertainInputs(testRig, near, { place: 0.2 }).find(({ id }) => id === "place")!;
    expect(placeRange(place)[0]).toBeCloseTo(0.02, 12);
    expect(drawn(testRig, near, { place: -0.2 }).event.at).toBeCloseTo(0.02, 12);
  });
});

describe("the loads that are shown", () => {
  it("are the middle ones of the draws", () => {
    const loads = [
      [30, 1],
      [10, 2],
      [20, 9],
    ];
    expect(medianLoads(loads)).toEqual([20, 2]);
  });
});

describe("stretches of a webbing", () => {
  const stretch = (z: number, median: number, own = 0.05): LoadedPart => ({
    part: { id: `main/${z}`, name: `Main ${z}`, stretchOf: { id: "main", name: "Main line" }, median, own, causes: {} },
  });
  const medians = [9000, 9100, 9200, 9300, 9400, 9500];

  it("are counted by how weak a weak specimen is, and it is told how many were not", () => {
    // The strongest one by its median scatters most: among weak specimens it is the weakest.
    const parts = medians.map((median, z) => stretch(z, median, z === 5 ? 0.2 : 0.05));
    const kept = worthKeeping(parts, [medians.map(() => 5000)]);
    expect(kept).toEqual([0, 1, 2, 5]);
    expect(droppedStretches(parts, kept)).toEqual([{ line: "main", kept: 4, of: 6 }]);
    expect(droppedStretches(parts.slice(0, 3), [0, 1, 2])).toEqual([]);
  });
});

describe("a part that a run has no load of", () => {
  it("is refused by name, not taken for one that never fails", () => {
    const strengths = rigStrengths(testRig);
    const run = finish(executeRun(testRig, strengths, { event: fall, draw: NO_DRAW, accuracy: "quick" })) as GoodRun;
    const parts = loadedParts(testRig, strengths);
    for (const load of loadsIn(parts, run, strengths)) expect(load).toBeGreaterThanOrEqual(0);
    const unknown: LoadedPart = { part: { id: "swivel", name: "Swivel", median: 1, own: 0, causes: {} } };
    expect(() => loadsIn([unknown], run, strengths)).toThrow(/no load for Swivel \(swivel\)/);
  });
});
