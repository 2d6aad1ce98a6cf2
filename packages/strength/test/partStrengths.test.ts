import type { Condition } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { partStrengths } from "../src/index.ts";
import { asNew, exampleRig, rated, section } from "./exampleRig.ts";

const byId = (rig = exampleRig()) => new Map(partStrengths(rig).map((part) => [part.id, part]));

it("lists the parts in the order of the load's way from harness to rock", () => {
  expect(partStrengths(exampleRig()).map((part) => part.id)).toEqual([
    "harness",
    "leash",
    "ring",
    "main",
    "connection.0",
    "connection.1",
    "backup",
    "endA",
    "endB",
    "backup.endA",
    "backup.endB",
    "anchorA.hardware.0",
    "anchorA.points.0",
    "anchorA.points.1",
    "anchorB.hardware.0",
    "anchorB.points.0",
    "anchorB.points.1",
  ]);
});

it("a new rope leash gives way in its knot, far below the ring", () => {
  const parts = byId();
  const leash = parts.get("leash")!;
  expect(leash.weakest?.reason).toBe("knot (figure-eight) at the harness");
  expect(leash.strength).toBeCloseTo(22000 * 0.61, 6);
  expect(parts.get("ring")!.strength5).toBeGreaterThan(2 * leash.strength95);
});

it("a part of which nothing is written down counts as the worst that it can be, and names the blank that costs most", () => {
  const rig = exampleRig();
  const blank = byId({ ...rig, harness: { rated: rig.harness.rated } }).get("harness")!;
  const old = { monthsOutside: 36, sun: 1, ageYears: 10, wet: true };
  const worst = byId({ ...rig, harness: { rated: rig.harness.rated, condition: old } }).get("harness")!;
  expect(blank.noData).toBe(true);
  expect(blank.strength).toBeLessThanOrEqual(worst.strength);
  expect(JSON.stringify(blank.flags[0])).toContain("basis.standIn");
  expect(blank.blanks!.map(({ field }) => field)).toEqual([
    "harness.condition.outside",
    "harness.condition.age",
    "harness.condition.wet",
  ]);
  // A life of fifty years in the sun leaves nothing of it.
  expect(blank.blanks![0]!.costs).toBeCloseTo(0, 5);
  expect(byId().get("harness")!.blanks).toBeUndefined();
});

it("names the clamp mark and its place as the weakest of an old line", () => {
  const rig = exampleRig();
  const old = section({
    condition: { monthsOutside: 18 },
    wear: [
      { kind: "fallZone", from: 25, to: 35, falls: 60 },
      { kind: "clampMark", at: 3, length: 0.3, months: 12 },
    ],
  });
  const main = byId({ ...rig, main: { ...rig.main, sections: [old] } }).get("main")!;
  expect(main.weakest).toEqual({ at: 3, reason: "clamp mark" });
  expect(main.zones!.map((z) => z.reason)).toEqual(["webbing", "clamp mark", "webbing", "fall zone", "webbing"]);
});

it("a weblock is as strong as the weaker of its metal and the webbing in it", () => {
  const rig = exampleRig();
  expect(byId().get("endA")!.strength).toBeCloseTo(30000 * 0.95, 6);
  const weak = { ...rig.main.endA, rated: { ...rig.main.endA.rated, strength: 20000 } };
  expect(byId({ ...rig, main: { ...rig.main, endA: weak } }).get("endA")!.strength).toBeCloseTo(20000 * 0.95, 6);
});

describe("a condition that is written", () => {
  const old = { monthsOutside: 20, sun: 1, ageYears: 4, wet: false };

  it("of a weblock counts for the webbing in it, where it is worse than that of its section", () => {
    const plain = exampleRig();
    const end = (condition: Condition | undefined, ofSection: Condition) => {
      const endA = { ...plain.main.endA, ...(condition === undefined ? {} : { condition }) };
      const sections = [section({ condition: ofSection })];
      return byId({ ...plain, main: { ...plain.main, sections, endA } }).get("endA")!;
    };
    expect(end(old, asNew).strength5).toBeCloseTo(end(undefined, old).strength5, 6);
    expect(end(asNew, old).strength5).toBeCloseTo(end(undefined, old).strength5, 6);
    expect(end(old, asNew).strength5).toBeLessThan(end(undefined, asNew).strength5);
    expect(end({ ...old, monthsOutside: 40 }, asNew).beyond).toHaveLength(1);
  });

  it("of a ring, a shackle or a bolt changes nothing, and that is said", () => {
    const plain = exampleRig();
    const shackle = { name: "shackle", kind: "shackle", rated: rated(50_000) } as const;
    const parts = (condition: Condition) =>
      byId({
        ...plain,
        rings: [{ ...plain.rings[0]!, condition }],
        anchorA: {
          ...plain.anchorA,
          hardware: [{ ...shackle, condition }],
          points: plain.anchorA.points.map((point) => ({ ...point, condition })),
        },
      });
    for (const id of ["ring", "anchorA.hardware.0", "anchorA.points.0"]) {
      const [worn, blank] = [parts(old).get(id)!, parts({}).get(id)!];
      expect(worn.strength).toBe(blank.strength);
      expect(
        worn.flags.some((flag) => flag.code === "condition.onMetal"),
        id,
      ).toBe(true);
      expect(
        blank.flags.some((flag) => flag.code === "condition.onMetal"),
        id,
      ).toBe(false);
    }
  });
});
