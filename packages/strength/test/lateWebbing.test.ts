/** A record of webbing that does not go back to its first use, and damage that file and record both have. */
import type { Rig, Wear } from "@secondline/rig";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyWear, partStrengths, readWearRecord, strengthAlong, wearState } from "../src/index.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { exampleRig, polyesterWebbing, section } from "./exampleRig.ts";

type Webbing = NonNullable<WearDocument["webbings"]>[number];
type Entries = Webbing["entries"];

const plain = exampleRig();
/** A main line of 18 months outside, with an old clamp mark and a fall zone, a year in its weblocks. */
const usedRig = (given: Partial<ReturnType<typeof section>> = {}, monthsClamped: number | null = 12): Rig => {
  const { monthsClamped: _none, ...end } = plain.main.endA;
  const weblock = { ...end, ...(monthsClamped === null ? {} : { monthsClamped }) };
  const used = section({
    condition: { monthsOutside: 18, sun: 0.8, latitude: "middle", ageYears: 5, wet: false },
    wear: [
      { kind: "clampMark", at: 4.3, length: 0.35, months: 14, load: 3200 },
      { kind: "fallZone", from: 24, to: 42, falls: 140 },
    ],
    ...given,
  });
  return exampleRig({ main: { ...plain.main, sections: [used], endA: weblock, endB: weblock } });
};

const RIGGED = {
  event: "rigged",
  rig: "test rig",
  line: "main",
  markedEnd: "A",
  from: "3 m",
  to: "62 m",
  clampedAt: ["A", "B"] as ("A" | "B")[],
  sun: "80 %",
  tension: "3.2 kN",
} as const;

function recordOf(entries: Entries, given: Partial<Webbing> = {}) {
  const webbing = {
    id: "w",
    name: "webbing",
    length: "80 m",
    mark: "red thread",
    made: "2021-10-01",
    ...given,
    entries,
  };
  const reading = readWearRecord({
    secondline: "wear/1",
    name: "record",
    latitude: "middle",
    hemisphere: "north",
    webbings: [webbing],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.record;
}
const worn = (rig: Rig, entries: Entries, given: Partial<Webbing> = {}, on = "2026-08-01") =>
  applyWear(rig, recordOf(entries, given), on);
const holds = (rig: Rig, id: string) => partStrengths(rig).find((part) => part.id === id)!.strength5;
const PARTS = ["main", "endA", "endB"];

const HUNG = { date: "2026-07-04", ...RIGGED } as const;
const DRY = { date: "2026-07-04", event: "wet", wet: false } as const;
const FALL = { date: "2026-07-05", event: "falls", from: "30 m", to: "31 m", falls: 1 } as const;
const LATE: Entries = [HUNG, DRY, FALL];

describe("a record of webbing that begins late", () => {
  it("does not wipe out what the file says, and says so", () => {
    const { rig, notes } = worn(usedRig(), LATE);
    for (const id of PARTS) {
      expect(holds(rig, id)).toBeLessThanOrEqual(holds(usedRig(), id));
      expect(holds(rig, id)).toBeGreaterThan(0.95 * holds(usedRig(), id));
    }
    expect(JSON.stringify(notes)).toContain(
      '"record.late","values":{"name":"webbing","begun":{"day":"2026-07-04"},"typed":"2026-07-04"}',
    );
  });

  it("adds its months, its falls and its time in the weblocks", () => {
    const { rig } = worn(usedRig(), LATE);
    const months = 28 / 30.436875;
    const { condition, wear } = rig.main.sections[0]!;
    expect(condition.monthsOutside).toBeCloseTo(18 + months, 10);
    expect(condition.sunMonths).toBeCloseTo(
      0.8 * (5 * 1.65 + 5 * 1.65 + 5 * 1.5 + 3 * 1.45) + 0.8 * 1.65 * (28 / 31),
      10,
    );
    expect(condition.ageYears).toBeCloseTo(5 + months / 12, 10);
    expect(wear).toContainEqual({ kind: "clampMark", at: 4.3, length: 0.35, months: 14, load: 3200 });
    const falls = wear.flatMap((one) => (one.kind === "fallZone" ? [[one.from, one.to, one.falls]] : []));
    expect(falls).toEqual([
      [24, 27, 140],
      [27, 28, 141],
      [28, 42, 140],
    ]);
    expect(rig.main.endA.monthsClamped).toBeCloseTo(12 + months, 10);
  });

  it("carries the file's time in a weblock into the span with the mark", () => {
    const letIn = { date: "2026-07-20", event: "retensioned", end: "A", pulled: "-1 m" } as const;
    const marks = (monthsClamped: number | null) =>
      worn(usedRig({ wear: [] }, monthsClamped), [...LATE, letIn]).rig.main.sections[0]!.wear.flatMap((one) =>
        one.kind === "clampMark" ? [[one.at, one.months]] : [],
      );
    const own = 16 / 30.436875;
    expect(marks(12)).toEqual([[expect.closeTo(1, 9), expect.closeTo(12 + own, 9)]]);
    // Nobody wrote down how long: as long as the webbing was outside.
    expect(marks(null)).toEqual([[expect.closeTo(1, 9), expect.closeTo(18 + own, 9)]]);
  });

  it("leaves unknown what the file leaves blank", () => {
    const blank = usedRig({ condition: {}, wear: [] }, null);
    const { rig } = worn(blank, [HUNG, FALL], { made: undefined as never });
    expect(rig.main.sections[0]!.condition).toEqual({});
    expect(rig.main.endA.monthsClamped).toBeUndefined();
    for (const id of PARTS) expect(holds(rig, id)).toBeLessThanOrEqual(holds(blank, id));
  });

  it("in a bag has strengths as of webbing that may have been outside all its life", () => {
    const along = (given: Partial<Webbing>) =>
      strengthAlong(wearState(recordOf(LATE, given), "2026-08-01").webbings[0]!, polyesterWebbing)[0]!.strength5;
    expect(along({})).toBeLessThan(0.8 * along({ firstUse: "2026-07-04" }));
  });
});

describe("a record of webbing from its first use on", () => {
  it.each([
    ["made on the day of its first entry", { made: "2026-07-04" }],
    ["unused in its bag until then", { firstUse: "2026-07-04" }],
  ])("counts alone: %s", (_, given) => {
    const { rig, notes } = worn(usedRig(), LATE, given);
    expect(rig.main.sections[0]!.condition.monthsOutside).toBeCloseTo(28 / 30.436875, 10);
    expect(rig.main.sections[0]!.wear.map(({ kind }) => kind)).toEqual(["fallZone"]);
    expect(rig.main.endA.monthsClamped).toBeCloseTo(28 / 30.436875, 10);
    expect(JSON.stringify(notes)).not.toContain("record.late");
  });
});

it("falls of the file are kept where the record never speaks of falls", () => {
  const none = { date: "2026-07-05", event: "falls", from: "30 m", to: "31 m", falls: 0 } as const;
  const zones = (entries: Entries) =>
    worn(usedRig(), entries, { firstUse: "2026-07-04" }).rig.main.sections[0]!.wear.flatMap((one) =>
      one.kind === "fallZone" ? [one.falls] : [],
    );
  expect(zones([HUNG, DRY])).toEqual([140]);
  expect(zones([HUNG, DRY, none])).toEqual([0]);
  const { notes } = worn(usedRig(), [HUNG, DRY], { firstUse: "2026-07-04" });
  expect(JSON.stringify(notes)).toContain('"record.damageKept"');
});

describe("damage that both the file and the record have", () => {
  const NEW = { firstUse: "2026-07-04" } as const;
  const cut = (depth: string) =>
    ({ date: "2026-07-06", event: "damage", kind: "cut", from: "23 m", to: "23 m", depth }) as const;
  const written = (depth: number) => usedRig({ wear: [{ kind: "cut", at: 20, depth }] });
  const cuts = (rig: Rig) =>
    rig.main.sections[0]!.wear.flatMap((one) => (one.kind === "cut" ? [[one.at, one.depth]] : []));

  it.each([
    ["the file", 0.4, "10 %"],
    ["the record", 0.1, "40 %"],
  ])("counts once, as the worse of the two: that of %s", (whose, depth, recorded) => {
    for (const given of [NEW, {}]) {
      const { rig, notes } = worn(written(depth), [...LATE, cut(recorded)], given);
      expect(cuts(rig)).toEqual([[20, 0.4]]);
      expect(notes.some((note) => note.code === "record.damageWorse")).toBe(whose === "the file");
    }
  });

  it("takes in both stretches of an abrasion", () => {
    const rig = usedRig({ wear: [{ kind: "abrasion", from: 20, to: 21, depth: 0.3 }] });
    const abraded = { date: "2026-07-06", event: "damage", kind: "abrasion", from: "23.5 m", to: "25 m", depth: "5 %" };
    const { wear } = worn(rig, [...LATE, abraded as Entries[number]], NEW).rig.main.sections[0]!;
    expect(wear.filter(({ kind }) => kind === "abrasion")).toEqual([
      { kind: "abrasion", from: 20, to: 22, depth: 0.3 },
    ]);
  });

  it("is kept where the record has none", () => {
    const { rig, notes } = worn(written(0.4), LATE, NEW);
    expect(cuts(rig)).toEqual([[20, 0.4]]);
    expect(JSON.stringify(notes)).toContain('{"list":[{"code":"damage.cut"');
  });
});

it("no record of less than a webbing's whole life raises a strength above what the file says", () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const months = fc.double({ min: 0, max: 40, noNaN: true });
  const place = fc.double({ min: 1, max: 55, noNaN: true });
  const wear = fc.oneof(
    fc
      .record({ at: place, months })
      .map(({ at, months: m }): Wear => ({ kind: "clampMark", at, length: 0.3, months: m })),
    fc
      .record({ at: place, falls: fc.integer({ min: 0, max: 400 }) })
      .map(({ at, falls }): Wear => ({ kind: "fallZone", from: at, to: at + 3, falls })),
    fc.record({ at: place, depth: share }).map(({ at, depth }): Wear => ({ kind: "cut", at, depth: 0.9 * depth })),
    fc
      .record({ at: place, depth: share })
      .map(({ at, depth }): Wear => ({ kind: "abrasion", from: at, to: at + 1, depth: 0.9 * depth })),
    place.map((at): Wear => ({ kind: "stitching", at, length: 0.2 })),
  );
  const day = fc.integer({ min: 5, max: 27 }).map((n) => `2026-07-${String(n).padStart(2, "0")}`);
  const metre = (m: number) => `${m} m`;
  const entry = fc.oneof(
    fc.boolean().map((wet) => ({ event: "wet", wet })),
    place.map((at) => ({ event: "falls", from: metre(at + 3), to: metre(at + 4), falls: 20 })),
    fc.tuple(place, share).map(([at, depth]) => ({
      event: "damage",
      kind: "abrasion",
      from: metre(at + 3),
      to: metre(at + 4),
      depth: `${Math.round(90 * depth)} %`,
    })),
    fc.constantFrom("A", "B").map((end) => ({ event: "retensioned", end, pulled: "0.2 m" })),
    fc.constant({ event: "inspected", by: "Ada", found: "nothing", judgement: "sound" }),
  );
  const entries = fc
    .array(fc.tuple(day, entry), { maxLength: 6 })
    .map((list) => list.map(([date, what]) => ({ date, ...what })).sort((a, b) => a.date.localeCompare(b.date)));
  const condition = fc.record(
    { monthsOutside: months, sun: share, ageYears: fc.integer({ min: 0, max: 12 }), wet: fc.boolean() },
    { requiredKeys: ["ageYears", "wet"] },
  );
  fc.assert(
    fc.property(
      condition,
      fc.array(wear, { maxLength: 4 }),
      fc.option(months),
      entries,
      (written, marks, clamped, list) => {
        const rig = usedRig({ condition: written, wear: marks }, clamped);
        const after = worn(rig, [HUNG, ...(list as Entries)]).rig;
        for (const id of PARTS) expect(holds(after, id)).toBeLessThanOrEqual(holds(rig, id) * (1 + 1e-12));
      },
    ),
    { seed: 20260704, numRuns: 200 },
  );
});
