import { readFileSync } from "node:fs";
import { type Rig, readRig } from "@secondline/rig";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leashFall } from "../src/events/leashFall.ts";
import { nearEnd } from "../src/events/places.ts";
import { shifted, spaceOf } from "../src/events/registry.ts";
import { addEventKind, parseWhatIf, titleOf, type WhatIf, whatIfKey, whatIfSet } from "../src/index.ts";
import { testRig } from "./testRig.ts";

function demoRig(name: string): Rig {
  const reading = readRig(readFileSync(new URL(`../../../demo-data/${name}.json`, import.meta.url), "utf8"));
  if (!reading.ok) throw new Error("The demo rig is not valid.");
  return reading.rig;
}

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

describe("a part that gives way in another what-if", () => {
  it("has a key that names the part, its place and the other what-if", () => {
    fc.assert(
      fc.property(anyWhatIf, fc.option(places, { nil: undefined }), (during, place) => {
        const event: WhatIf = {
          kind: "givesWay",
          at: during.at,
          part: "main",
          ...(place === undefined ? {} : { place }),
          during: during as Extract<WhatIf, { kind: "leashFall" }>,
        };
        expect(parseWhatIf(whatIfKey(event))).toEqual(event);
      }),
      { seed: 8, numRuns: 200 },
    );
    expect(parseWhatIf("gives@swivel/fall@0.5")).toBeUndefined();
    expect(parseWhatIf("gives@main:1.5/fall@0.5")).toBeUndefined();
  });

  it("is titled by what happens, not by a question", () => {
    const event = parseWhatIf("gives@main:0.066/fall@0.5")!;
    expect(titleOf(event, testRig)).toMatchObject({ key: "event.givesWay", values: { part: { part: "main" } } });
  });
});

describe("what-ifs that tell of each other", () => {
  const familyOf = (key: string) => spaceOf(parseWhatIf(key)!)!.family;

  // A draw of half a line that comes off says nothing of how far most of it scatters: it flies past its anchor before it jerks there.
  it("have as much of the line come off, to the same side, where the main line fails", () => {
    const most = familyOf("fails@0.1077,caught@0.0577");
    expect(familyOf("fails@0.3,caught@0.25")).toBe(most);
    for (const other of ["fails@0.5,caught@0.5", "fails@0.8923,caught@0.9423", "fails@0,caught@0.0577"])
      expect(familyOf(other)).not.toBe(most);
    expect(familyOf("fails@0.8923,caught@0.9423")).toBe(familyOf("fails@0.7,caught@0.75"));
  });
});

describe("a what-if a little elsewhere", () => {
  it("stays on the line, and fails as much later as it is told", () => {
    expect(shifted({ kind: "leashFall", at: 0.002 }, -0.004, 0).at).toBeCloseTo(0.001, 12);
    const caught = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "caught" } as const;
    expect(shifted(caught, 0.004, 0.01)).toEqual({ ...caught, at: 0.504, late: 0.01 });
    expect(shifted({ ...caught, walker: "hanging" }, 0.004, 0.01)).not.toHaveProperty("late");
  });
});

describe("another kind of what-if", () => {
  it("is one descriptor and one line: it has keys, a title and a place in the set", () => {
    const remove = addEventKind({
      ...leashFall,
      kind: "bounce" as never,
      key: ({ at }: { at: number }) => `bounce@${at}`,
      parse: (key: string) => (key === "bounce@0.5" ? ({ kind: "bounce", at: 0.5 } as never) : undefined),
      seeds: () => [{ kind: "bounce", at: 0.5 } as never],
    });
    const keys = whatIfSet({ rig: testRig, weakPlaces: [], size: "full" }).map(whatIfKey);
    expect(keys.at(-1)).toBe("bounce@0.5");
    expect(whatIfKey(parseWhatIf("bounce@0.5")!)).toBe("bounce@0.5");
    remove();
    expect(parseWhatIf("bounce@0.5")).toBeUndefined();
  });
});

describe("the set of what-ifs", () => {
  const weakPlaces = [0.05, 0.4];
  const full = whatIfSet({ rig: testRig, weakPlaces, size: "full" });

  it("has no repetition and is the same every time", () => {
    const keys = full.map(whatIfKey);
    expect(new Set(keys).size).toBe(keys.length);
    expect(whatIfSet({ rig: testRig, weakPlaces, size: "full" }).map(whatIfKey)).toEqual(keys);
  });

  it.each(["sound-rig", "loose-backup", "old-rig"])("is, for %s, what its keys say, whoever reads them", (name) => {
    const awkward = { ...demoRig(name), span: 61.7 };
    const set = whatIfSet({ rig: awkward, weakPlaces: [1 / 7, 0.123456], size: "full" });
    expect(set.length).toBeGreaterThan(20);
    for (const event of set) expect(parseWhatIf(whatIfKey(event))).toEqual(event);
    const others = set.flatMap(
      (event) => spaceOf(event)?.others({ rig: awkward, weakPlaces: [1 / 7], size: "full" }) ?? [],
    );
    expect(others.length).toBeGreaterThan(100);
    for (const event of others) expect(parseWhatIf(whatIfKey(event))).toEqual(event);
  });

  it("keeps an event whose key cannot be read: what is hardly a place is still looked at", () => {
    const set = whatIfSet({ rig: { ...testRig, span: 1e6 }, weakPlaces: [], size: "full" });
    expect(set.some((event) => event.kind === "leashFall" && event.at > 0 && event.at < 1e-5)).toBe(true);
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

  it("lets the line fail beside the walker in a catch where no connection holds what comes off", () => {
    const { connections: _, ...backup } = testRig.backup!;
    const bare = { ...testRig, backup: { ...backup, connections: [] } };
    const beside = (rig: Rig) =>
      whatIfSet({ rig, weakPlaces: [], size: "full" }).flatMap((one) =>
        one.kind === "mainFails" &&
        one.walker === "caught" &&
        one.cutAt > 0 &&
        one.cutAt < 1 &&
        one.cutAt !== one.at &&
        Math.abs(one.cutAt - one.at) < 0.06
          ? [[one.at, one.cutAt]]
          : [],
      );
    const found = beside(bare);
    expect(found.map(([at]) => at).sort()).toEqual([0.05, 0.25, 0.75, 0.95]);
    // Towards the farther end, which gets the longer piece.
    for (const [at, cutAt] of found) expect(Math.abs(cutAt! - 0.5)).toBeLessThan(Math.abs(at! - 0.5));
    expect(beside(testRig)).toEqual([]);
  });

  it("is its own mirror image without weak places", () => {
    const mirror = (one: WhatIf): WhatIf => {
      const at = 1 - one.at;
      if (one.kind === "legFails") return { ...one, at, anchor: one.anchor === "A" ? "B" : "A" };
      if (one.kind === "mainFails") return { ...one, at, cutAt: 1 - one.cutAt };
      return { ...one, at } as WhatIf;
    };
    const keys = whatIfSet({ rig: testRig, weakPlaces: [], size: "full" }).map(whatIfKey);
    expect(keys.map((key) => whatIfKey(mirror(parseWhatIf(key)!))).sort()).toEqual([...keys].sort());
  });

  it("keeps falls on a short line clear of the anchors' rigging", () => {
    expect(nearEnd({ ...testRig, span: 8 })).toBe(0.2);
    expect(nearEnd(testRig)).toBe(0.05);
  });

  it("has a quick part that is part of the whole, but for size", () => {
    const keys = new Set(full.map(whatIfKey));
    const quick = whatIfSet({ rig: testRig, weakPlaces, size: "quick" });
    expect(quick.length).toBeLessThan(full.length / 2);
    for (const one of quick) expect(keys).toContain(whatIfKey(one));
  });

  it("needs only falls, one failure per end and failing legs when there is no backup", () => {
    const { backup: _, ...alone } = testRig;
    const kinds = whatIfSet({ rig: alone, weakPlaces, size: "full" }).map(({ kind }) => kind);
    expect(kinds).toEqual([...Array(5).fill("leashFall"), ...Array(2).fill("mainFails"), ...Array(6).fill("legFails")]);
  });
});
