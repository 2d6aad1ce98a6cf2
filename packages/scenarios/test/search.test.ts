import { noteFact } from "@secondline/strength";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  assessRig,
  classOf,
  inputHash,
  NO_DRAW,
  type Outcome,
  type RunOrder,
  rigStrengths,
  type WhatIf,
  whatIfKey,
  whatIfSet,
} from "../src/index.ts";
import { BLOCK_DRAWS } from "../src/scatter/sampler.ts";
import { searched } from "./madeUpRuns.ts";
import { chanceOf } from "./randomRigs.ts";
import { testRig } from "./testRig.ts";

const set = whatIfSet({ rig: testRig, weakPlaces: rigStrengths(testRig).weakPlaces, size: "full" });
const fall: WhatIf = { kind: "leashFall", at: 0.5 };
const part = ({ parts }: Outcome, id: string) => parts.find((one) => one.id === id)!;

describe("a search", () => {
  it("runs every event of the set once, and draws the worst ones", () => {
    const ordered: RunOrder[] = [];
    const { outcome } = searched(testRig, { share: () => 0.3 }, {}, undefined, ordered);
    const keys = ordered.map(({ event, draw }) => `${whatIfKey(event)} ${JSON.stringify(draw)}`);
    expect(new Set(keys).size).toBe(keys.length);
    for (const event of set) expect(keys).toContain(`${whatIfKey(event)} {}`);
    expect(outcome.search).toMatchObject({ complete: true, gaps: [], events: set.length, of: set.length });
    for (const { byClass, governing } of outcome.parts) expect(byClass[governing!]!.runs % BLOCK_DRAWS).toBe(0);
  });

  it("draws the worst event of the part that keeps least, however much that is, and none of others that keep far more", () => {
    const isDrawn = (first: number, second: number) => {
      const share = (id: string, { event }: RunOrder) => {
        if (event.kind !== "mainFails") return 0.02;
        if (id === "connection.1" && event.walker === "standing") return first;
        return id === "endB" && event.walker === "caught" ? second : 0.02;
      };
      const { outcome } = searched(testRig, { share });
      return ["connection.1", "endB"].map((id) => part(outcome, id).byClass.afterFailure!.runs >= BLOCK_DRAWS);
    };
    // Times the 1.5 that is required after a failure; of single runs what 95 % stay under lies a fifth to a third higher.
    expect(isDrawn(0.3, 0.2)).toEqual([true, false]);
    expect(isDrawn(0.2, 0.5)).toEqual([false, true]);
    expect(isDrawn(0.45, 0.5)).toEqual([true, true]);
  });

  it("draws one event of every family that may be the worst once it is drawn: only draws show how much a family scatters", () => {
    const times = (second: number) => {
      const ordered: RunOrder[] = [];
      const share = (id: string, { event }: RunOrder) => {
        if (id !== "endB" || event.kind !== "mainFails" || event.cutAt <= 0 || event.cutAt >= 1) return 0.02;
        if (event.walker === "standing") return 0.45;
        return event.walker === "caught" ? second : 0.02;
      };
      searched(testRig, { share }, {}, undefined, ordered);
      const drawn = ordered.filter(({ draw }) => Object.keys(draw).length > 0).map(({ event }) => event);
      return ["standing", "caught"].map((pose) => drawn.filter((one) => "walker" in one && one.walker === pose).length);
    };
    const [standing, none] = times(0.25);
    expect(standing).toBeGreaterThanOrEqual(BLOCK_DRAWS);
    expect(none).toBe(0);
    expect(Math.min(...times(0.4))).toBeGreaterThanOrEqual(BLOCK_DRAWS);
  });

  it("says that a rig holds only when all of it is done: every state on the way is open", () => {
    const seen: Outcome[] = [];
    const { outcome } = searched(testRig, {}, {}, seen);
    expect(outcome.verdict).toBe("holds");
    expect(outcome.reasons).toEqual([]);
    expect(seen.length).toBeGreaterThan(1);
    for (const soFar of seen) {
      expect(soFar.verdict).toBe("open");
      expect(soFar.parts.map((one) => one.verdict)).not.toContain("holds");
    }
  });

  it.each([
    ["a quick look", { size: "quick" }],
    ["a coarse mesh", { accuracy: "quick" }],
    ["one what-if", { whatIfs: [fall] }],
    ["all what-ifs, named one by one, but not repeated", { whatIfs: set }],
  ] as const)("does not say so of %s", (_, options) => {
    const { outcome } = searched(testRig, {}, options);
    expect(outcome.verdict).toBe("open");
    expect(outcome.search.complete).toBe(false);
    expect(outcome.reasons.every(({ kind }) => kind === "gap")).toBe(true);
  });

  it("does not say so when a run failed, whichever", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: set.length - 1 }), (i) => {
        const key = whatIfKey(set[i]!);
        const { outcome } = searched(testRig, { trouble: ({ event }) => whatIfKey(event) === key });
        expect(outcome.verdict).toBe("open");
        expect(outcome.cautions.some(({ kind }) => kind === "failedRuns")).toBe(true);
      }),
      { seed: 3, numRuns: 8 },
    );
  });

  it("does not say so when a single draw failed: it may be the hardest of all", () => {
    let first: string | undefined;
    const { outcome } = searched(testRig, {
      trouble({ event, draw }) {
        if (draw === NO_DRAW) return false;
        const one = inputHash({ event, draw });
        first ??= one;
        return one === first;
      },
    });
    expect(first).toBeDefined();
    expect(outcome.verdict).toBe("open");
    expect(outcome.search.gaps).toMatchObject([{ kind: "failed", events: [expect.any(Number)] }]);
  });

  it("finds what fails in whatever part of the set it looks at", () => {
    const { outcome } = searched(testRig, { share: (id) => (id === "leash" ? 0.9 : 0.1) }, { whatIfs: [fall] });
    expect(outcome.verdict).toBe("fails");
    expect(outcome.reasons[0]).toEqual({ kind: "partFails", part: "leash" });
  });

  it("never says holds in any order of events or part of the set of a rig that the whole finds wanting", () => {
    const bad = fc.record({
      part: fc.constantFrom("leash", "endB", "main", "anchorA.points.1", "connection.1"),
      at: fc.integer({ min: 0, max: set.length - 1 }),
      share: fc.double({ min: 0.6, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(bad, fc.shuffledSubarray([...set], { minLength: 1 }), ({ part: id, at, share }, some) => {
        const key = whatIfKey(set[at]!);
        const made = {
          share: (one: string, { event }: RunOrder) => (one === id && whatIfKey(event) === key ? share : 0.05),
        };
        const whole = searched(testRig, made).outcome;
        const partial = searched(testRig, made, { whatIfs: some }).outcome;
        expect(partial.verdict).not.toBe("holds");
        if (whole.verdict !== "holds" && partial.verdict === "open") {
          expect(some.map(whatIfKey).includes(key) && partOf(whole, id)).toBeFalsy();
        }
      }),
      { seed: 11, numRuns: 8 },
    );
  });
});

/** Whether the part is loaded by what is counted. */
const partOf = (outcome: Outcome, id: string) => ["fails", "thin"].includes(part(outcome, id).verdict);

describe("the one rule", () => {
  it("takes as margin 1 ÷ the largest E over R, and E as what 95 % of draws stay under", () => {
    // The load goes with the walker's mass alone: a lognormal of 10 %, of which 95 % lie below 1.178 times the middle.
    const { outcome } = searched(testRig, {
      share: (id, { event, draw }) => (id === "leash" && event.kind === "leashFall" ? 0.3 * (draw.mass ?? 1) : 0.05),
    });
    const { expected, afterFailure } = part(outcome, "leash").byClass;
    const [low, high] = expected!.demandInterval.map((load) => load / expected!.strength5);
    // Something is always taken for chance, though there is none here.
    expect(low!).toBeLessThan(0.3 * 1.178 * 1.03);
    expect(high!).toBeGreaterThan(0.3 * 1.178);
    expect(high! / low!).toBeLessThan(1.25);
    expect(expected!.required).toBe(2);
    expect(afterFailure!.required).toBe(1.5);
    expect(1 / afterFailure!.margin).toBeGreaterThan(0.05);
    expect(expected!.demand / expected!.strength5).toBeCloseTo(1 / expected!.margin, 9);
    expect(expected!.marginInterval[0]).toBeLessThan(expected!.margin);
  });

  it("is not judged by the run that chose an event: a lucky one is drawn again and forgotten", () => {
    const once = {
      share: (id: string, { event, draw }: RunOrder) =>
        id === "leash" && event.kind === "leashFall" && Object.keys(draw).length === 0 ? 0.9 : 0.2,
    };
    const { outcome } = searched(testRig, once);
    const { expected } = part(outcome, "leash").byClass;
    expect(expected!.runs).toBeGreaterThanOrEqual(BLOCK_DRAWS);
    expect(expected!.demand / expected!.strength5).toBeLessThan(0.3);
  });

  it("says of what lies near its limit that it is not settled, and holds when more runs settle it", () => {
    const near = (share: number) => ({
      share: (id: string, { event, draw }: RunOrder) =>
        id === "leash" && event.kind === "leashFall"
          ? share * (0.7 + 0.6 * chanceOf(`${whatIfKey(event)} ${JSON.stringify(draw)}`))
          : 0.05,
    });
    const shares = [0.25, 0.31, 0.32, 0.33, 0.34, 0.35, 0.36, 0.45];
    const found = shares.map((share) => searched(testRig, near(share), { runs: 80 }).outcome);
    const said = found.map(({ verdict, reasons }) => (verdict === "thin" ? reasons[0]!.kind : verdict));
    expect([...new Set(said)]).toEqual(["holds", "unsettled", "partThin"]);
    const open = found[said.indexOf("unsettled")]!;
    expect(open.reasons).toEqual([{ kind: "unsettled", parts: ["leash"], height: false, pull: false }]);
    expect(part(open, "leash")).toMatchObject({ verdict: "thin", settled: false });
  });

  it("asks 2.0 of falls and 1.5 after a failure, and whatever else the rig says", () => {
    // Of loads that do not scatter E is about a tenth above them: what is learnt of the scatter begins with an assumption.
    const share = 1 / (1.1 * 1.75);
    const loaded = (kind: "expected" | "afterFailure") => ({
      share: (id: string, { event }: RunOrder) => (id === "endA" && classOf(event) === kind ? share : 0.05),
    });
    expect(part(searched(testRig, loaded("expected")).outcome, "endA").verdict).toBe("thin");
    expect(part(searched(testRig, loaded("afterFailure")).outcome, "endA").verdict).toBe("holds");
    const strict = { ...testRig, requiredAfterFailure: 1.9 };
    expect(part(searched(strict, loaded("afterFailure")).outcome, "endA").verdict).toBe("thin");
  });

  it("does not judge what the event itself takes away", () => {
    const made = {
      share: (id: string, { event }: RunOrder) =>
        id === "endA" && event.kind === "mainFails" && event.cutAt === 0 ? 3 : 0.05,
    };
    expect(searched(testRig, made).outcome.verdict).toBe("holds");
  });

  it("fails when nothing holds the walker in any run of any event, or when the feet reach the ground", () => {
    const when = (what: object) => ({
      run: ({ event, draw }: RunOrder) => (event.kind === "legFails" && (draw.mass ?? 1) < 0.95 ? what : {}),
    });
    const lost = searched(testRig, {
      ...when({ caughtBy: "nothing", lostBecause: "freeFall" }),
      share: heavyLegs,
    }).outcome;
    expect(lost.reasons[0]).toMatchObject({ kind: "notCaught" });
    const fallen = searched(testRig, {
      ...when({ caughtBy: "nothing", lostBecause: "freeFall", feetClearance: -40 }),
      share: heavyLegs,
    }).outcome;
    // Ground below makes no catch: both are said, and one is no other.
    expect(fallen.reasons.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["notCaught", "ground"]));
    expect(fallen.falls.notCaught).toEqual(fallen.falls.onGround);
    const ended = searched(testRig, {
      ...when({ caughtBy: "nothing", lostBecause: "ground", feetClearance: -0.2 }),
      share: heavyLegs,
    }).outcome;
    expect(ended.falls.notCaught).toEqual([]);
    expect(ended.falls.onGround.length).toBeGreaterThan(0);
    const ground = searched(testRig, { ...when({ feetClearance: -0.2 }), share: heavyLegs }).outcome;
    expect(ground.verdict).toBe("fails");
    expect(ground.reasons[0]).toMatchObject({ kind: "ground" });
  });

  it("is thin when the feet come nearer to the ground than is asked for", () => {
    const near = { run: () => ({ feetClearance: 0.6 }) };
    const [reason] = searched(testRig, near).outcome.reasons;
    expect(reason).toMatchObject({ kind: "groundNear", event: expect.any(Number), required: 1 });
    // A drop of 3 m scatters: what 95 % of the falls keep is less than the 0.6 m of every run here.
    expect((reason as { height: number }).height).toBeLessThan(0.6);
    expect((reason as { height: number }).height).toBeGreaterThan(0);
    expect(
      searched({ ...testRig, requiredClearance: 0.1 }, { run: () => ({ feetClearance: 1.6 }) }).outcome.verdict,
    ).toBe("holds");
  });

  it("judges the pull on the person by limits of its own", () => {
    const pulled = (newton: number) => searched(testRig, { pull: () => newton }).outcome;
    expect(pulled(4600).person!.grade).toBe("keeps");
    expect(pulled(5900)).toMatchObject({ verdict: "thin", reasons: [{ kind: "pullHard" }] });
    expect(pulled(11900)).toMatchObject({ verdict: "fails", reasons: [{ kind: "pullTooHard" }] });
  });

  it("holds nothing that no run loaded, and says why it was not", () => {
    const idle = searched(testRig, { share: (id) => (id === "backup.endA" ? 0 : 0.1) }).outcome;
    expect(part(idle, "backup.endA")).toMatchObject({ verdict: "notLoaded", notLoaded: "carriesNothing", byClass: {} });
    expect(idle.verdict).toBe("thin");
    expect(idle.reasons).toContainEqual({ kind: "notLoaded", parts: ["backup.endA"] });
    const lost = searched(testRig, {
      share: (id) => (id === "backup.endA" ? 0 : 0.1),
      run: () => ({ caughtBy: "nothing", lostBecause: "ground", feetClearance: -1 }),
    }).outcome;
    expect(part(lost, "backup.endA").notLoaded).toBe("walkerLost");
    expect(JSON.stringify(lost)).not.toMatch(/null|Infinity|NaN/);
  });

  it("makes an event of every part below its factor: it gives way, and what then holds is told", () => {
    const { outcome } = searched(testRig, {
      share: (id, { event }) => (id === "endA" && event.kind === "leashFall" ? 0.5 : 0.05),
    });
    const follow = outcome.followUps.find((one) => one.part === "endA")!;
    expect(follow.caughtBy).toBe("backup");
    expect(outcome.whatIfs[follow.whatIf!]).toMatchObject({ counts: true, key: expect.stringMatching(/^gives@endA/) });
    // Where the load is not reached again the main line holds on: that says nothing of what holds when its end gives way.
    const whole = searched(testRig, {
      share: (id, { event }) => (id === "endA" && event.kind === "leashFall" ? 0.5 : 0.05),
      run: ({ event }) => (event.kind === "givesWay" ? { caughtBy: "main" } : {}),
    }).outcome;
    expect(whole.followUps.filter(({ part }) => part === "endA")).toEqual([]);
    const leash = searched(testRig, { share: (id) => (id === "leash" ? 0.5 : 0.05) }).outcome;
    expect(leash.followUps.find((one) => one.part === "leash")).toMatchObject({ caughtBy: "nothing" });
    expect(leash.verdict).toBe("thin");
  });

  it("tells, without counting it, what follows when a second part gives way after a failure", () => {
    const { outcome } = searched(testRig, {
      share: (id, { event }) => (id === "backup.endA" && event.kind === "mainFails" ? 0.7 : 0.05),
      run: ({ event }) => (event.kind === "givesWay" ? { caughtBy: "nothing", lostBecause: "freeFall" } : {}),
    });
    const follow = outcome.followUps.find((one) => one.part === "backup.endA")!;
    expect(outcome.whatIfs[follow.whatIf!]!.counts).toBe(false);
    expect(follow.caughtBy).toBe("nothing");
    expect(outcome.verdict).toBe("thin");
  });

  it("is monotone: more load, less strength or more asked for never improves a verdict", () => {
    const order = ["fails", "thin", "open", "holds"];
    const rank = (outcome: Outcome) => order.indexOf(outcome.verdict);
    const ids = ["leash", "endA", "main", "anchorB.points.0"];
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.02, max: 1.2, noNaN: true }), { minLength: 4, maxLength: 4 }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        fc.constantFrom("load", "strength", "factor"),
        (shares, worse, how) => {
          const made = (times: number) => ({
            share: (id: string) => times * (shares[ids.indexOf(id)] ?? 0.05),
          });
          const before = searched(testRig, made(1), { whatIfs: [...set] }).outcome;
          const after =
            how === "factor"
              ? searched({ ...testRig, requiredFactor: { ...testRig.requiredFactor, value: 2 * worse } }, made(1), {
                  whatIfs: [...set],
                }).outcome
              : searched(testRig, made(worse), { whatIfs: [...set] }).outcome;
          expect(rank(after)).toBeLessThanOrEqual(rank(before));
        },
      ),
      { seed: 5, numRuns: 12 },
    );
  });

  it("withholds what somebody must look at first", () => {
    const edge = noteFact("need.unfit", { name: "Main webbing", reason: "Ada" });
    const assessed = { ...assessRig(testRig), withholds: [edge] };
    expect(searched(assessed).outcome).toMatchObject({
      verdict: "thin",
      reasons: [{ kind: "withheld", what: edge }],
    });
  });

  it("never says holds of a part of whose wear nothing is known any more, and says so", () => {
    const cut = [{ kind: "cut", at: 20, depth: 0.41 }] as const;
    const sections = testRig.main.sections.map((section) => ({ ...section, wear: cut }));
    const { outcome } = searched({ ...testRig, main: { ...testRig.main, sections } });
    const what = { code: "beyond.known", values: { outside: { values: { got: 0.41, to: 0.4 } } } };
    expect(outcome).toMatchObject({ verdict: "thin", reasons: [{ kind: "withheld", what }] });
    expect(outcome.parts.find(({ id }) => id === "main")!.verdict).toBe("open");
    expect(outcome.parts.find(({ id }) => id === "leash")!.verdict).toBe("holds");
  });

  it("never says holds while a value is not confirmed, and says so beside every fault", () => {
    const unconfirmed = ["main.pretension", "anchorA.points[0].strength"];
    const reason = { kind: "unconfirmed", paths: unconfirmed };
    expect(searched(testRig).outcome.verdict).toBe("holds");
    const { outcome } = searched({ ...testRig, unconfirmed });
    expect(outcome).toMatchObject({ verdict: "thin", reasons: [reason] });
    expect(outcome.cautions).toContainEqual(reason);
    const failing = searched({ ...testRig, unconfirmed }, { share: (id) => (id === "leash" ? 2 : 0.05) }).outcome;
    expect(failing.verdict).toBe("fails");
    expect(failing.reasons).toContainEqual(reason);
  });

  it("has lapsed for whatever nobody has judged since: it never says holds, of no part either", () => {
    const sentence = noteFact("need.unfit", { name: "Main webbing", reason: "Ada" });
    const lapses = [
      { of: { webbing: "Main webbing" }, kind: "open", sentence },
      { of: { part: "leash" }, kind: "overdue", due: "2026-06-01" },
    ] as const;
    const assessed = { ...assessRig(testRig), withholds: [sentence], upkeep: { lapses } };
    const { outcome } = searched(assessed);
    expect(outcome).toMatchObject({ verdict: "thin", reasons: [{ kind: "lapsed", lapses }] });
    // What it has lapsed for is said once.
    expect(outcome.reasons).toHaveLength(1);
    expect(new Set(outcome.parts.map(({ verdict }) => verdict))).toEqual(new Set(["open"]));
    const failing = searched(assessed, { share: (id) => (id === "leash" ? 2 : 0.05) }).outcome;
    expect(failing.verdict).toBe("fails");
    expect(failing.reasons).toContainEqual({ kind: "lapsed", lapses });
  });

  it("makes no run again when a value is confirmed: only what the verdict is told of changes", () => {
    const [marked, confirmed] = [assessRig({ ...testRig, unconfirmed: ["span"] }), assessRig(testRig)];
    expect(marked.hash).not.toBe(confirmed.hash);
    expect(marked.runsHash).toBe(confirmed.runsHash);
    expect(confirmed.runsHash).toBe(confirmed.hash);
  });
});

/** Legs that fail ask most of the points, so that they are among the worst and are repeated. */
const heavyLegs = (id: string, { event }: RunOrder) =>
  event.kind === "legFails" && id.includes("points") ? 0.4 : 0.05;

describe("first to fail and least margin", () => {
  it("are two things: the likeliest in the worst what-if, and the least share of what is required", () => {
    const { outcome } = searched(testRig, {
      share: (id) => (id === "leash" ? 0.3 : id === "main" ? 0.29 : 0.05),
      first: true,
    });
    expect(outcome.leastMargin).toBe("leash");
    const ids = outcome.likelyFirst!.parts.map(({ id }) => id);
    expect(outcome.firstToFail).toBe(ids[0]);
    expect(ids).toContain("leash");
  });
});

describe("parts without a second", () => {
  it("are named whatever their margin: leash, ring, harness, and what both lines hang on", () => {
    const { outcome } = searched(testRig);
    const single = outcome.singles.filter((one) => one.single).map((one) => one.part);
    expect(single).toEqual(["harness", "leash", "ring", "anchorA.hardware.0", "anchorB.hardware.0"]);
    const main = outcome.singles.find((one) => one.part === "endA")!;
    expect(main).toMatchObject({ leaves: "backup", single: false, catches: true });
    expect(main.shownBy.length).toBeGreaterThan(3);
  });

  it("are fewer when main line and backup hang on slings of their own, and more without a backup", () => {
    const [shackle] = testRig.anchorA.hardware;
    const apart = {
      ...testRig,
      anchorA: {
        ...testRig.anchorA,
        hardware: [
          { ...shackle!, carries: "main" },
          { ...shackle!, carries: "backup" },
        ],
      },
    } as const;
    const single = (rig: typeof testRig) =>
      searched(rig)
        .outcome.singles.filter((one) => one.single)
        .map((one) => one.part);
    expect(single(apart)).not.toContain("anchorA.hardware.0");
    const { backup: _, ...alone } = testRig;
    expect(single(alone)).toEqual(expect.arrayContaining(["main", "endA", "endB"]));
  });
});
