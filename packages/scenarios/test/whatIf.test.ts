import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseWhatIf, type WhatIf, whatIfKey, whatIfSet } from "../src/index.ts";
import { whatIfTitle } from "../src/whatIf.ts";
import { nearEnd } from "../src/whatIfSet.ts";
import { testRig } from "./testRig.ts";

const places = fc.integer({ min: 1, max: 9999 }).map((n) => n / 10_000);
const anyWhatIf: fc.Arbitrary<WhatIf> = fc.oneof(
  places.map((at) => ({ kind: "leashFall" as const, at })),
  fc.record({
    kind: fc.constant("mainFails" as const),
    at: places,
    cutAt: fc.oneof(places, fc.constantFrom(0, 1)),
    walker: fc.constantFrom("hanging" as const, "standing" as const, "caught" as const),
  }),
  fc.record({
    kind: fc.constant("legFails" as const),
    at: places,
    anchor: fc.constantFrom("A" as const, "B" as const),
    leg: fc.integer({ min: 0, max: 11 }),
    walker: fc.constantFrom("hanging" as const, "caught" as const),
  }),
);

describe("a what-if as a key", () => {
  it("is read back as it was written", () => {
    fc.assert(
      fc.property(anyWhatIf, (whatIf) => {
        expect(parseWhatIf(whatIfKey(whatIf))).toEqual(whatIf);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it.each([
    "",
    "fall",
    "fall@2",
    "fall@0",
    "fall@1",
    "fails@0",
    "fails@0,flying@0.5",
    "fails@-1,hanging@0.5",
    "fails@0,hanging@1",
    "fall@0.5 ",
    "leg@A0,caught@0.5",
    "leg@C1,caught@0.5",
    "leg@A1,standing@0.5",
    "leg@A1,caught@1",
  ])("refuses %j", (text) => {
    expect(parseWhatIf(text)).toBeUndefined();
  });
});

describe("the title of a what-if", () => {
  it("counts from the nearer anchor", () => {
    expect(whatIfTitle({ kind: "leashFall", at: 0.05 }, 60)).toBe("Leash fall 3 m from anchor A");
    expect(whatIfTitle({ kind: "leashFall", at: 0.75 }, 60)).toBe("Leash fall 15 m from anchor B");
    expect(whatIfTitle({ kind: "leashFall", at: 0.5 }, 60)).toBe("Leash fall in the middle");
  });
  it("says where the line fails and what the walker does", () => {
    expect(whatIfTitle({ kind: "mainFails", at: 0.5, cutAt: 0, walker: "caught" }, 60)).toBe(
      "Main line fails at anchor A, walker being caught in the middle",
    );
    expect(whatIfTitle({ kind: "legFails", at: 0.95, anchor: "B", leg: 1, walker: "hanging" }, 60)).toBe(
      "Leg 2 of anchor B fails, walker hanging 3 m from anchor B",
    );
  });
});

describe("the set of what-ifs", () => {
  const weakPlaces = [0.05, 0.4];
  const full = whatIfSet(testRig, { weakPlaces });

  it("has no repetition and is the same every time", () => {
    const keys = full.map(whatIfKey);
    expect(new Set(keys).size).toBe(keys.length);
    expect(whatIfSet(testRig, { weakPlaces }).map(whatIfKey)).toEqual(keys);
  });

  it("lets the main line fail at both ends, in the middle and at every weak place", () => {
    const cuts = new Set(full.flatMap((one) => (one.kind === "mainFails" ? [one.cutAt] : [])));
    expect([...cuts].sort()).toEqual([0, 0.05, 0.4, 0.5, 1]);
  });

  it("has the walker hang, stand and be caught when an end fails", () => {
    for (const end of [0, 1]) {
      const walkers = full.flatMap((one) => (one.kind === "mainFails" && one.cutAt === end ? [one.walker] : []));
      expect(new Set(walkers)).toEqual(new Set(["hanging", "standing", "caught"]));
    }
  });

  it("puts the walker in the middle of the bay beside a failed end", () => {
    const inBay = (cutAt: number, at: number) =>
      full.some((one) => one.kind === "mainFails" && one.cutAt === cutAt && one.walker === "hanging" && one.at === at);
    expect(inBay(0, 0.25)).toBe(true);
    expect(inBay(1, 0.75)).toBe(true);
  });

  it("is its own mirror image without weak places", () => {
    const mirror = (one: WhatIf): WhatIf => {
      const at = 1 - one.at;
      if (one.kind === "legFails") return { ...one, at, anchor: one.anchor === "A" ? "B" : "A" };
      return one.kind === "leashFall" ? { ...one, at } : { ...one, at, cutAt: 1 - one.cutAt };
    };
    const keys = whatIfSet(testRig).map(whatIfKey);
    expect(keys.map((key) => whatIfKey(mirror(parseWhatIf(key)!))).sort()).toEqual([...keys].sort());
  });

  it("keeps falls on a short line clear of the anchors' rigging", () => {
    expect(nearEnd({ ...testRig, span: 8 })).toBe(0.2);
    expect(nearEnd(testRig)).toBe(0.05);
  });

  it("has a quick part that is part of the whole, but for size", () => {
    const keys = new Set(full.map(whatIfKey));
    const quick = whatIfSet(testRig, { weakPlaces, size: "quick" });
    expect(quick.length).toBeLessThan(full.length / 2);
    for (const one of quick) expect(keys).toContain(whatIfKey(one));
  });

  it("needs only falls, one failure per end and failing legs when there is no backup", () => {
    const { backup: _, ...alone } = testRig;
    const kinds = whatIfSet(alone, { weakPlaces }).map(({ kind }) => kind);
    expect(kinds).toEqual([...Array(5).fill("leashFall"), ...Array(2).fill("mainFails"), ...Array(6).fill("legFails")]);
  });
});
