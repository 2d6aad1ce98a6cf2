import { judgePart, type Rig } from "@secondline/rig";
import { beforeAll, describe, expect, it } from "vitest";
import {
  anchorFacts,
  assessRig,
  type Outcome,
  rigStrengths,
  runWhatIf,
  study,
  type WhatIf,
  whatIfSet,
} from "../src/index.ts";
import { anchorLegs, legShare } from "../src/run/anchorLegs.ts";
import { anchorSignal, partLoads } from "../src/run/loads.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const degrees = (angle: number) => (angle * Math.PI) / 180;
const side = (count: number, angle: number): Rig["anchorA"] => ({
  ...testRig.anchorA,
  legAngle: degrees(angle),
  points: Array.from({ length: count }, () => testRig.anchorA.points[0]!),
});
const legFails: WhatIf = { kind: "legFails", anchor: "A", leg: 0, walker: "caught", at: 0.5 };
const setOf = (rig: Rig) => whatIfSet({ rig, weakPlaces: [], size: "full" });
const run = (rig: Rig, whatIf: WhatIf) => finish(runWhatIf(assessRig(rig), whatIf, { accuracy: "quick" }));

describe("the points of an anchor", () => {
  it("share by the angle of their legs, two at most carrying all of it", () => {
    expect(legShare(side(1, 0))).toBe(1);
    expect(legShare(side(2, 0))).toBe(0.5);
    expect(legShare(side(2, 90))).toBeCloseTo(Math.SQRT1_2, 12);
    expect(legShare(side(3, 120))).toBeCloseTo(1, 12);
  });

  it("get what the failed one carried: of two the other all of it; of more a leg in the line's direction may, too", () => {
    expect(legShare(side(2, 90), 0)).toBe(1);
    expect(legShare(side(2, 150), 1)).toBe(1);
    expect(legShare(side(3, 60), 0)).toBe(1);
    expect(legShare(side(4, 90), 3)).toBe(1);
    expect(legShare(side(3, 150), 0)).toBe(legShare(side(3, 150)));
    expect(legShare(side(3, 90), 1)).toBeCloseTo(Math.SQRT1_2, 12);
  });

  it("lie so that the line pulls along the middle of their legs, each leg as long as the rig says", () => {
    const rig = { ...testRig, rise: 8, anchorB: side(3, 70) };
    const legs = anchorLegs(rig, "B", [1, 2, 3]);
    for (const { rock } of legs) expect(Math.hypot(...rock)).toBeCloseTo(rig.anchorB.legLength, 12);
    const [x, y, z] = [0, 1, 2].map((c) => legs.reduce((sum, { rock }) => sum + rock[c]!, 0));
    expect(y).toBeCloseTo(0, 12);
    expect(z! / x!).toBeCloseTo(8 / 60, 12);
    expect(x).toBeGreaterThan(0);
  });
});

describe("a leg that fails during a catch", () => {
  const { outcome, recording } = run(testRig, legFails);

  it("leaves the walker held, a little lower than the fall alone", () => {
    const fall = run(testRig, { kind: "leashFall", at: 0.5 }).outcome;
    expect(outcome).toMatchObject({ ok: true, caughtBy: "main" });
    expect(outcome.gaveWay).toEqual([]);
    expect(outcome.drop! - fall.drop!).toBeGreaterThan(-0.05);
    expect(outcome.drop! - fall.drop!).toBeLessThan(2);
    expect(outcome.feetClearance).toBeLessThanOrEqual(fall.feetClearance! + 0.05);
  });

  it("puts on the other leg what the whole anchor carries, as the engine's own legs bear out", () => {
    const whole = anchorSignal(recording!, "A").reduce((most, force) => Math.max(most, force), 0);
    const [failed, other] = recording!.legs;
    expect([failed!.parted, other!.parted]).toEqual([true, false]);
    // The leg's own peak is unfiltered and holds the ringing of the master point.
    expect(other!.peak / whole).toBeGreaterThan(0.85);
    expect(other!.peak / whole).toBeLessThan(1.25);
  });

  it("leaves of three the middle one with nearly all of it, as the engine's own legs bear out", () => {
    const three = { ...testRig, anchorA: side(3, 60) };
    const { recording: left } = run(three, legFails);
    const whole = anchorSignal(left!, "A").reduce((most, force) => Math.max(most, force), 0);
    expect(left!.legs[1]!.peak / whole).toBeGreaterThan(0.85);
    expect(partLoads(three, left!).get("anchorA.points.1")).toBeCloseTo(whole, 6);
  });

  it("is computed for legs as short, as stiff and as wide as the rig format takes them", () => {
    const whole = { ...testRig.anchorA, legLength: 0.05 };
    const sides = [whole, { ...whole, stiffness: 1e9 }, { ...side(2, 150), stiffness: 1e9 }, side(2, 1)];
    for (const anchorA of sides) {
      expect(run({ ...testRig, anchorA }, legFails).outcome).toMatchObject({ ok: true, caughtBy: "main" });
    }
  });

  it("cannot be asked of an anchor that has no such leg: the answer says so and shows no numbers", () => {
    expect(run(testRig, { ...legFails, leg: 2 }).outcome).toMatchObject({
      ok: false,
      trouble: { reason: "missing", phrase: { key: "missing.leg" } },
    });
    const single = { ...testRig, anchorA: side(1, 0) };
    expect(run(single, legFails).outcome.trouble!.phrase!.key).toBe("missing.legs");
  });

  it("takes the other with it when that holds less than the line, and then nothing holds the walker's end", () => {
    const weak = judgePart(testRig, "anchorA.points.1", { factor: 0.12, reason: "test" })!;
    const lost = run(weak, legFails).outcome;
    expect(lost.gaveWay.map((one) => one.part)).toContain("anchorA.points.1");
    expect(lost.gaveWay.at(-1)!.time).toBeGreaterThan(1.5);
    expect(lost.caughtBy).toBe("nothing");
  });
});

describe("the set of what-ifs", () => {
  const legs = (rig: Rig) => setOf(rig).filter(({ kind }) => kind === "legFails");

  it("has legs fail at anchors with several points only, the outermost two of each", () => {
    expect(legs({ ...testRig, anchorA: side(1, 0), anchorB: side(1, 0) })).toEqual([]);
    const three = legs({ ...testRig, anchorA: side(1, 0), anchorB: side(3, 90) });
    expect(new Set(three.map((one) => one.kind === "legFails" && `${one.anchor}${one.leg}`))).toEqual(
      new Set(["B0", "B2"]),
    );
  });

  it("spends no more than a sixth of a full study on them", () => {
    expect(legs(testRig).length).toBeLessThanOrEqual(setOf(testRig).length / 5);
  });
});

describe("what a study says of its anchors", () => {
  let outcome: Outcome;
  const rig = {
    ...testRig,
    anchorA: {
      ...testRig.anchorA,
      hardware: [
        { ...testRig.anchorA.hardware[0]!, name: "Sling", kind: "sling" as const, rigged: "choked" as const },
        { ...testRig.anchorA.hardware[0]!, name: "Basket", kind: "sling" as const, rigged: "basket" as const },
      ],
    },
  };
  beforeAll(() => {
    const judged = judgePart(rig, "anchorB.points.0", { factor: 0.5, reason: "rust stains" })!;
    outcome = finish(
      study(assessRig(judged), { accuracy: "quick", whatIfs: [{ kind: "leashFall", at: 0.5 }, legFails] }),
    ).outcome;
  });
  const part = (id: string) => outcome.parts.find((one) => one.id === id)!;

  it("judges a point by the run in which it is left alone", () => {
    const [alone, gone, whole] = ["anchorA.points.1", "anchorA.points.0", "anchorA.hardware.0"].map(part);
    expect(alone!.byClass.afterFailure!.whatIf).toBe(1);
    expect(alone!.byClass.afterFailure!.load / whole!.byClass.afterFailure!.load).toBeGreaterThan(0.95);
    // What the event takes away is judged by the other events alone.
    expect(gone!.byClass.afterFailure).toBeUndefined();
    expect(gone!.byClass.expected!.load).toBeLessThan(0.7 * alone!.byClass.afterFailure!.load);
  });

  it("names a choked sling's factor and where it is from", () => {
    expect(part("anchorA.hardware.0").factors).toContainEqual(expect.objectContaining({ name: "choked", value: 0.8 }));
    expect(part("anchorA.hardware.0").bases.some(({ note }) => JSON.stringify(note).includes("EN 1492-1"))).toBe(true);
  });

  const judged = () => outcome.cautions.flatMap((one) => (one.kind === "judged" ? one.judged : []));

  it("tells what raises a strength, with the margin as it is counted in", () => {
    const raised = judged().find(({ part: id }) => id === "anchorA.hardware.1")!;
    expect(raised.value).toBeCloseTo(1.4, 12);
    expect(raised.own).toBe(false);
    const { byClass, governing } = part("anchorA.hardware.1");
    expect(raised.margin).toBe(byClass[governing!]!.margin);
  });

  it("repeats an own judgement with its reason", () => {
    const own = judged().find((one) => one.own)!;
    expect(own).toMatchObject({ part: "anchorB.points.0", value: 0.5 });
    expect(own.reason).toMatchObject({ values: { reason: "rust stains" } });
  });

  it("says what the weakest point would keep alone, against the whole anchor", () => {
    const anchors = outcome.cautions.flatMap((one) => (one.kind === "anchors" ? one.anchors : []));
    const alone = anchors.find(({ anchor }) => anchor === "B")!.alone!;
    expect(alone.part).toBe("anchorB.points.0");
    const whole = part("anchorB.hardware.0").byClass.expected!.demand;
    expect(alone.margin).toBeLessThanOrEqual(part("anchorB.points.0").strength5 / whole + 1e-9);
  });
});

describe("facts about anchors", () => {
  it("know the share of two legs by their angle, and that one point has none to share with", () => {
    const strengths = rigStrengths(testRig);
    const rig = { ...testRig, anchorA: side(2, 130), anchorB: side(1, 0) };
    const [a, b] = anchorFacts(rig, strengths.parts, { A: 5000, B: 5000 });
    expect(a!.share).toBeCloseTo(1 / (2 * Math.cos(degrees(65))), 12);
    expect(b).toMatchObject({ points: 1, share: 1 });
    expect(a!.alone!.margin).toBeCloseTo(
      strengths.parts.find(({ id }) => id === "anchorA.points.0")!.strength5 / 5000,
      9,
    );
  });
});
