import { beforeAll, describe, expect, it } from "vitest";
import {
  type Accuracy,
  type Outcome,
  type Rig,
  rigStrengths,
  runWhatIf,
  type StudyProgress,
  study,
  type WhatIf,
  type WhatIfOutcome,
} from "../src/index.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const fall: WhatIf = { kind: "leashFall", at: 0.5 };
const fails: WhatIf = { kind: "mainFails", at: 0.4, cutAt: 0, walker: "hanging" };

/** Every number in a value, however deep, with its path. */
function numbers(value: unknown, path = ""): [string, number][] {
  if (typeof value === "number") return [[path, value]];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => numbers(inner, `${path}.${key}`));
}

describe("a study", () => {
  const seen: StudyProgress[] = [];
  let outcome: Outcome;
  beforeAll(() => {
    outcome = finish(study(testRig, { accuracy: "quick", whatIfs: [fall, fails], estimate: true, traces: true }), seen);
  });

  it("reports progress that only rises, and what it is doing", () => {
    const done = seen.map((one) => one.done);
    expect([...done].sort((a, b) => a - b)).toEqual(done);
    expect(done.at(-1)).toBeLessThanOrEqual(1);
    expect(new Set(seen.map((one) => one.doing))).toContain("Leash fall in the middle");
  });

  it("contains nothing but finite numbers", () => {
    for (const [path, value] of numbers(outcome)) expect([path, Number.isFinite(value)]).toEqual([path, true]);
  });

  it("judges every part once, in the order of the load's way, and no tape", () => {
    const ids = outcome.parts.map((part) => part.id);
    expect(ids.slice(0, 4)).toEqual(["harness", "leash", "ring", "main"]);
    expect(ids).toContain("connection.1");
    expect(ids).not.toContain("connection.0");
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("gives every load a ± when asked to estimate", () => {
    for (const part of outcome.parts) {
      expect(part.loadUncertainty).toBeGreaterThanOrEqual(0);
      expect(part.loadUncertainty).toBeLessThan(0.5 * part.load);
    }
  });

  it("keeps the highest force of a run in its trace", () => {
    for (const { trace, peaks } of outcome.whatIfs) expect(Math.max(...trace!.leash)).toBe(Math.round(peaks!.leash));
  });

  it("shares an anchor's load between two points by the angle between their legs", () => {
    const of = (id: string) => outcome.parts.find((part) => part.id === id)!.load;
    // 60° between the legs: 1/(2 cos 30°) each.
    expect(of("anchorA.points.0") / of("anchorA.hardware.0")).toBeCloseTo(1 / Math.sqrt(3), 6);
  });

  it("catches the walker on the backup, clear of the ground", () => {
    const caught = outcome.whatIfs[1]!;
    expect(caught.caught).toBe(true);
    expect(caught.feetClearance).toBeCloseTo(caught.clearance! - testRig.walker.tieIn, 9);
    expect(Math.max(caught.peaks!.backupA, caught.peaks!.backupB)).toBeGreaterThan(1000);
  });
});

const studied = (rig: Rig, ...whatIfs: WhatIf[]) => finish(study(rig, { accuracy: "quick", whatIfs }));

describe("the verdict", () => {
  it("fails when there is no backup and the main line goes", () => {
    const { backup: _, ...alone } = testRig;
    const outcome = studied(alone, fall, { ...fails, at: 0.5 });
    expect(outcome.verdict).toBe("fails");
    expect(outcome.whatIfs[1]!.caught).toBe(false);
    expect(outcome.cautions.join(" ")).toContain("no backup");
  });

  it("fails when webbing carries more than it holds, and names the place", () => {
    const section = testRig.main.sections[0]!;
    const weak: Rig = {
      ...testRig,
      main: {
        ...testRig.main,
        sections: [
          {
            ...section,
            wear: [
              { kind: "cut", at: 12, depth: 0.9 },
              { kind: "clampMark", at: 12, length: 0.3, months: 24 },
            ],
          },
        ],
      },
    };
    const outcome = studied(weak, fall);
    const main = outcome.parts.find((part) => part.id === "main")!;
    expect(main.margin).toBeLessThanOrEqual(1);
    expect(main.verdict).toBe("fails");
    expect(main.weakest!.at).toBeCloseTo(12, 0);
    expect(outcome.firstToFail).toBe("main");
    expect(outcome.sentence).toMatch(/^Fails: the main line at its .*cut.* 12 m from A/);
  });

  it("fails when the walker reaches the ground, and gives the speed", () => {
    const low: Rig = {
      ...testRig,
      ground: [
        [0, -6],
        [60, -6],
      ],
    };
    const outcome = studied(low, { ...fails, at: 0.25 });
    expect(outcome.verdict).toBe("fails");
    expect(outcome.whatIfs[0]!.groundSpeed).toBeGreaterThan(1);
    expect(outcome.sentence).toContain("reaches the ground");
  });

  it("is thin when the feet come near the ground though every part holds", () => {
    const free = studied(testRig, fall);
    const low = free.whatIfs[0]!.clearance! - 40 - testRig.walker.tieIn - 0.5;
    const outcome = studied(
      {
        ...testRig,
        ground: [
          [0, low],
          [60, low],
        ],
      },
      fall,
    );
    expect(outcome.parts.every((part) => part.verdict === "holds")).toBe(true);
    expect(outcome.verdict).toBe("thin");
    expect(outcome.sentence).toContain("feet come within");
  });
});

describe("a walker who is just being caught", () => {
  it("loses the main line at the moment at which the leash of the same fall pulls hardest", () => {
    const caught = finish(runWhatIf(testRig, { ...fails, walker: "caught" }, { accuracy: "quick" }));
    const before = finish(runWhatIf(testRig, { kind: "leashFall", at: fails.at }, { accuracy: "quick" }));
    expect(caught.recording!.problem.cut!.time).toBe(before.recording!.peaks.leash.cfc60Time);
    expect(caught.recording!.problem.start).toBe("standing");
  });
});

describe("one what-if with an estimate", () => {
  it("has a ± on every peak", () => {
    const { outcome } = finish(runWhatIf(testRig, fall, { accuracy: "quick", estimate: true, duration: 3 }));
    expect(outcome.peakUncertainty!.leash).toBeGreaterThan(0);
    expect(outcome.peakUncertainty!.leash).toBeLessThan(0.3 * outcome.peaks!.leash);
  });
});

describe("a connection that parts on one mesh and holds on the other", () => {
  let estimated: WhatIfOutcome;
  let whole: Outcome;
  beforeAll(() => {
    const peak = (accuracy: Accuracy) =>
      finish(runWhatIf(testRig, fails, { accuracy })).recording!.connections.find(({ tape }) => !tape)!.peak;
    const between = (peak("quick") + peak("fine")) / 2;
    const holds = rigStrengths(testRig).parts.find(({ id }) => id === "connection.1")!;
    const backup = testRig.backup!;
    const connections = backup.connections.map((one, i) =>
      i === 1 ? { ...one, rated: { ...one.rated, strength: (one.rated.strength * between) / holds.strength } } : one,
    );
    const marginal: Rig = { ...testRig, backup: { ...backup, connections } };
    estimated = finish(runWhatIf(marginal, fails, { accuracy: "quick", estimate: true })).outcome;
    whole = finish(study(marginal, { accuracy: "quick", whatIfs: [fails], estimate: true }));
  }, 120_000);

  it("leaves every ± unknown, and says so", () => {
    expect(estimated.peakUncertainty).toBeUndefined();
    expect(estimated.problem).toMatch(/other parts fail/);
    expect(whole.parts.length).toBeGreaterThan(10);
    for (const part of whole.parts) {
      expect([part.name, part.uncertaintyUnknown, part.verdict === "holds"]).toEqual([part.name, true, false]);
    }
    expect(whole.cautions.join(" ")).toContain("or other parts broke in it, for: ");
  });
});

describe("a quick look, of few what-ifs", () => {
  const quick = (required?: number) =>
    finish(
      study(
        required === undefined
          ? testRig
          : { ...testRig, requiredFactor: { ...testRig.requiredFactor, value: required } },
        {
          accuracy: "quick",
          size: "quick",
        },
      ),
    );

  it("holds only where it leaves more than what is required, and says how much more", () => {
    const { parts } = quick();
    const least = Math.min(...parts.map(({ margin }) => margin));
    const near = quick(least / 1.1);
    expect(near.verdict).toBe("thin");
    expect(near.sentence).toContain("of the few what-ifs of a quick look, which has to leave 15 % more");
    expect(near.parts.map(({ margin }) => margin)).toEqual(parts.map(({ margin }) => margin));
    expect(quick(least / 1.2).verdict).toBe("holds");
  });
});
