/** A record of a part that does not go back to its first use: the rig's file counts, and the record is added to it. */
import type { Rig } from "@secondline/rig";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyWear, partStrengths, readWearRecord } from "../src/index.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { asNew, exampleRig } from "./exampleRig.ts";

type Part = NonNullable<WearDocument["parts"]>[number];

const plain = exampleRig();
const USED_SLING = { monthsOutside: 40, sun: 1, ageYears: 4, wet: false };
const USED: Rig = exampleRig({
  leash: {
    ...plain.leash,
    condition: { monthsOutside: 20, sun: 1, latitude: "middle", ageYears: 2, wet: false },
    falls: 350,
  },
  anchorA: {
    ...plain.anchorA,
    hardware: [{ ...plain.anchorA.hardware[0]!, condition: { ...USED_SLING, latitude: "middle" } }],
  },
});

function read(parts: readonly Part[]) {
  return readWearRecord({ secondline: "wear/1", name: "record", latitude: "middle", hemisphere: "north", parts });
}
function worn(rig: Rig, parts: readonly Omit<Part, "rig">[], on = "2026-08-01") {
  const reading = read(parts.map((part) => ({ ...part, rig: "test rig" })));
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return applyWear(rig, reading.record, on);
}
/** Two years but two Decembers and two Januaries [months of full sun]. */
const TWENTY_MONTHS = 24 - 2 * 0.35 - 2 * 0.4;
const holds = (rig: Rig, id: string) => partStrengths(rig).find((part) => part.id === id)!.strength5;
const DRY = { date: "2026-06-01", event: "wet", wet: false } as const;
const LOOKED = { date: "2026-06-02", event: "inspected", by: "Ada", found: "nothing", judgement: "sound" } as const;

describe("a record of a part that begins late", () => {
  it("does not make a used sling or leash newer by one harmless entry, and says so", () => {
    const { rig, notes } = worn(USED, [
      { part: "leash", made: "2024-06-01", entries: [DRY, LOOKED] },
      { part: "anchorA.hardware.0", made: "2022-06-01", entries: [DRY] },
    ]);
    for (const id of ["leash", "anchorA.hardware.0"]) {
      expect(holds(rig, id)).toBeLessThanOrEqual(holds(USED, id));
      expect(holds(rig, id)).toBeGreaterThan(0.95 * holds(USED, id));
    }
    expect(rig.leash).toMatchObject({
      falls: 350,
      condition: { monthsOutside: 20, sunMonths: expect.closeTo(TWENTY_MONTHS, 9), wet: false },
    });
    expect(JSON.stringify(notes)).toContain('{"part":"leash"}},"begun":{"day":"2026-06-01"}');
  });

  it("adds its months, sun and falls to what the file says", () => {
    const { rig } = worn(USED, [
      {
        part: "leash",
        made: "2024-06-01",
        entries: [
          { date: "2026-06-01", event: "putUp", sun: "100 %" },
          { date: "2026-07-01", event: "falls", falls: 30 },
        ],
      },
    ]);
    const months = 61 / 30.436875;
    expect(rig.leash.falls).toBe(380);
    expect(rig.leash.condition.monthsOutside).toBeCloseTo(20 + months, 10);
    expect(rig.leash.condition.sunMonths).toBeCloseTo(TWENTY_MONTHS + 1.65 + 1.65, 10);
    // Two years on the day on which the record begins, and two months more.
    expect(rig.leash.condition.ageYears).toBeCloseTo(2 + months / 12, 2);
  });

  it("leaves unknown what the file leaves blank", () => {
    const { falls: _falls, ...leash } = USED.leash;
    const blank: Rig = { ...USED, leash: { ...leash, condition: {} } };
    const { rig } = worn(blank, [
      {
        part: "leash",
        entries: [
          { date: "2026-06-01", event: "putUp" },
          { date: "2026-07-01", event: "falls", falls: 3 },
        ],
      },
    ]);
    expect(rig.leash.falls).toBeUndefined();
    expect(rig.leash.condition).toEqual({});
    expect(holds(rig, "leash")).toBe(holds(blank, "leash"));
  });

  it("keeps what the file says while it has no entry by the day", () => {
    const { rig } = worn(USED, [{ part: "leash", made: "2024-08-05", entries: [{ ...DRY, date: "2026-09-01" }] }]);
    expect(holds(rig, "leash")).toBe(holds(worn(USED, []).rig, "leash"));
  });

  it("counts as wet when the file or the record says so", () => {
    const wetFile: Rig = { ...USED, harness: { ...USED.harness, condition: { ...asNew, wet: true } } };
    expect(worn(wetFile, [{ part: "harness", entries: [DRY] }]).rig.harness.condition?.wet).toBe(true);
    expect(worn(USED, [{ part: "harness", entries: [{ ...DRY, wet: true }] }]).rig.harness.condition?.wet).toBe(true);
  });
});

describe("a record of a part from its first use on", () => {
  const UP = { date: "2026-06-01", event: "putUp", sun: "50 %" } as const;
  const NONE = { date: "2026-06-01", event: "falls", falls: 0 } as const;

  it.each([
    ["made on the day of its first entry", { made: "2026-06-01" }],
    ["unused until then", { made: "2024-06-01", firstUse: "2026-06-01" }],
  ])("counts alone: %s", (_, beginning) => {
    const { rig, notes } = worn(USED, [{ part: "leash", ...beginning, entries: [UP, DRY, NONE] }]);
    expect(rig.leash.falls).toBe(0);
    expect(rig.leash.condition.monthsOutside).toBeCloseTo(61 / 30.436875, 10);
    expect(JSON.stringify(notes)).not.toContain("record.late");
  });

  it("leaves months unknown that no entry tells, and falls", () => {
    const { rig } = worn(USED, [{ part: "leash", made: "2026-06-01", entries: [DRY] }]);
    expect(rig.leash.falls).toBeUndefined();
    expect(rig.leash.condition.monthsOutside).toBeUndefined();
    expect(rig.leash.condition.ageYears).toBeCloseTo(2 / 12, 2);
    expect(holds(rig, "leash")).toBeLessThan(
      holds(worn(USED, [{ part: "leash", made: "2026-06-01", entries: [UP, DRY, NONE] }]).rig, "leash"),
    );
  });

  it("begins anew with a new part", () => {
    const entries: Part["entries"] = [UP, DRY, { date: "2026-07-01", event: "falls", falls: 9 }];
    const { rig } = worn(USED, [{ part: "leash", entries: [...entries, { date: "2026-07-20", event: "replaced" }] }]);
    expect(rig.leash.falls).toBe(0);
    expect(rig.leash.condition.monthsOutside).toBeCloseTo(12 / 30.436875, 10);
  });

  it("a new part is as old as it lay on its shelf, and of unknown age without a word on that", () => {
    const ofLeash = (made?: string) => {
      const replaced = { date: "2026-07-20", event: "replaced", ...(made === undefined ? {} : { made }) } as const;
      const entries: Part["entries"] = [UP, DRY, NONE, replaced, { ...NONE, date: "2026-07-20" }];
      return worn(USED, [{ part: "leash", entries }]);
    };
    const shelved = ofLeash("2024-07-20");
    expect(shelved.rig.leash.condition.ageYears).toBeCloseTo(2 + 12 / 365.25, 2);
    expect(shelved.rig.leash.condition.monthsOutside).toBeCloseTo(12 / 30.436875, 10);
    const unsaid = ofLeash();
    expect(unsaid.rig.leash.condition.ageYears).toBeUndefined();
    expect(JSON.stringify(unsaid.notes)).toContain("record.replacedUnmade");
    expect(JSON.stringify(shelved.notes)).not.toContain("record.replacedUnmade");
    for (const made of ["2026-07-20", "2024-07-20", "2017-07-20"]) {
      expect(holds(unsaid.rig, "leash")).toBeLessThan(holds(ofLeash(made).rig, "leash"));
    }
  });

  it("a new part cannot be made after it took its place", () => {
    const replaced = { date: "2026-07-20", event: "replaced", made: "2026-07-21" } as const;
    const reading = read([{ rig: "test rig", part: "leash", entries: [UP, replaced] }]);
    expect(reading.ok ? [] : reading.issues.map(({ path }) => path)).toEqual(["parts[0].entries[1].made"]);
  });

  it("cannot begin before it was made, nor after it was used", () => {
    const faults = (beginning: Partial<Part>) => {
      const reading = read([{ rig: "test rig", part: "leash", ...beginning, entries: [UP] }]);
      return reading.ok ? [] : reading.issues.map(({ path }) => path);
    };
    expect(faults({ made: "2026-05-01", firstUse: "2026-04-01" })).toEqual(["parts[0].firstUse"]);
    expect(faults({ firstUse: "2026-06-02" })).toEqual(["parts[0].firstUse"]);
    expect(faults({ made: "2026-05-01", firstUse: "2026-06-01" })).toEqual([]);
  });
});

it("no record of less than a part's whole life raises its strength above what the file says", () => {
  const day = fc.integer({ min: 1, max: 90 }).map((n) => new Date(Date.UTC(2026, 4, n)).toISOString().slice(0, 10));
  const event = fc.oneof(
    fc.boolean().map((wet) => ({ event: "wet", wet })),
    fc.integer({ min: 0, max: 300 }).map((falls) => ({ event: "falls", falls })),
    fc.constant({ event: "inspected", by: "Ada", found: "nothing", judgement: "sound" }),
    fc.constant({ event: "edgeContact" }),
  );
  const condition = fc.record(
    {
      monthsOutside: fc.double({ min: 0, max: 60, noNaN: true }),
      sun: fc.double({ min: 0, max: 1, noNaN: true }),
      ageYears: fc.integer({ min: 0, max: 12 }),
      wet: fc.boolean(),
    },
    { requiredKeys: ["wet", "ageYears"] },
  );
  const entries = fc
    .tuple(fc.array(fc.tuple(day, event), { maxLength: 6 }), fc.option(day))
    .map(([list, up]) =>
      [...list.map(([date, what]) => ({ date, ...what })), ...(up === null ? [] : [{ date: up, event: "putUp" }])].sort(
        (a, b) => a.date.localeCompare(b.date),
      ),
    );
  fc.assert(
    fc.property(condition, entries, fc.boolean(), (written, list, isMade) => {
      const rig: Rig = {
        ...USED,
        leash: { ...USED.leash, condition: written },
        anchorA: { ...USED.anchorA, hardware: [{ ...USED.anchorA.hardware[0]!, condition: written }] },
      };
      const made = isMade ? { made: "2026-03-01" } : {};
      const parts = ["leash", "anchorA.hardware.0"].map((part) => ({
        part,
        ...made,
        entries: list as Part["entries"],
      }));
      const after = worn(rig, parts).rig;
      for (const id of ["leash", "anchorA.hardware.0"]) {
        expect(holds(after, id)).toBeLessThanOrEqual(holds(rig, id) * (1 + 1e-12));
      }
    }),
    { seed: 20260601, numRuns: 150 },
  );
});
