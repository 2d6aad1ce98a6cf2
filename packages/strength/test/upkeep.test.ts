/** The upkeep of a rig by its record: of the webbing and parts that hang in it, and of nothing else. */
import { describe, expect, it } from "vitest";
import { applyWear, readDate, readWearRecord, type Upkeep, upkeepOf } from "../src/index.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { exampleRig } from "./exampleRig.ts";

type Entries = NonNullable<WearDocument["webbings"]>[number]["entries"];
const RIGGED = {
  date: "2026-04-01",
  event: "rigged",
  rig: "test rig",
  line: "main",
  markedEnd: "A",
  from: "2 m",
  to: "62 m",
} as const;
const LOOKED = { event: "inspected", by: "Ada", found: "nothing", judgement: "sound" } as const;

function recordOf(entries: Entries, more: Partial<WearDocument> = {}) {
  const webbing = { id: "w", name: "red webbing", length: "80 m", mark: "red thread", made: "2025-01-01", entries };
  const reading = readWearRecord({ secondline: "wear/1", name: "record", webbings: [webbing], ...more });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.record;
}
const upkeep = (entries: Entries, more?: Partial<WearDocument>, on = "2026-06-30"): Upkeep =>
  upkeepOf(exampleRig(), recordOf(entries, more), readDate(on)!);
const PLAN = { plans: [{ rig: "test rig", inspectEvery: "1 month", falls: 40 }] };

describe("the upkeep of a rig", () => {
  it("without a plan says nothing of inspections to come", () => {
    expect(upkeep([RIGGED])).toEqual({ lapses: [], lastEntry: RIGGED.date });
  });

  it("names the first later day of which the record says something of this rig, and of no other", () => {
    const storm = { date: "2026-07-09", event: "storm" } as const;
    const parts = (rig: string): WearDocument["parts"] => [
      { rig, part: "leash", entries: [{ date: "2026-07-03", event: "putUp" }] },
    ];
    expect(upkeep([RIGGED, storm])).toEqual({ lapses: [], lastEntry: RIGGED.date, nextEntry: "2026-07-09" });
    expect(upkeep([RIGGED, storm], {}, "2026-07-10").lastEntry).toBe("2026-07-09");
    expect(upkeep([RIGGED, storm], { parts: parts("test rig") }).nextEntry).toBe("2026-07-03");
    expect(upkeep([RIGGED, storm], { parts: parts("another rig") }).nextEntry).toBe("2026-07-09");
    expect(upkeep([RIGGED, storm], {}, "2026-07-09").nextEntry).toBeUndefined();
    expect(upkeep([{ ...RIGGED, rig: "another rig" }, storm]).nextEntry).toBeUndefined();
  });

  it("names what lapsed, in the words of the record's own needs", () => {
    const storm = { date: "2026-06-01", event: "storm", until: "2026-06-04", note: "gusts" } as const;
    const record = recordOf([RIGGED, storm]);
    const [lapse] = upkeepOf(exampleRig(), record, readDate("2026-06-30")!).lapses;
    expect(lapse).toEqual({
      of: { webbing: "red webbing" },
      kind: "open",
      sentence: applyWear(exampleRig(), record, "2026-06-30").needsInspection[0],
    });
  });

  it("of the last setting of a tension tells once, with its day", () => {
    const pulled = { event: "retensioned", end: "A", pulled: "0.1 m" } as const;
    const entries: Entries = [RIGGED, { ...pulled, date: "2026-06-01" }, { ...pulled, date: "2026-06-02", end: "B" }];
    expect(upkeep(entries).lapses).toEqual([{ of: { webbing: "red webbing" }, kind: "tension", on: "2026-06-02" }]);
    expect(upkeep([...entries, { ...LOOKED, date: "2026-06-02" }]).lapses).toEqual([]);
  });

  it("gives the next inspection and the falls that are left, of what comes first and has fewest", () => {
    const parts: WearDocument["parts"] = [
      {
        rig: "test rig",
        part: "leash",
        entries: [
          { date: "2026-04-01", event: "putUp" },
          { ...LOOKED, date: "2026-06-05" },
          { date: "2026-06-20", event: "falls", falls: 35 },
        ],
      },
    ];
    const entries: Entries = [RIGGED, { ...LOOKED, date: "2026-06-10" }];
    expect(upkeep(entries, { ...PLAN, parts })).toEqual({
      lapses: [],
      nextInspection: "2026-07-05",
      plannedFallsLeft: 5,
      parts: ["leash"],
      lastEntry: "2026-06-20",
    });
    expect(upkeep(entries, { ...PLAN, parts }, "2026-07-06").lapses).toEqual([
      { of: { part: "leash" }, kind: "overdue", due: "2026-07-05" },
    ]);
  });

  it("of a plan for another rig, and of webbing that hangs elsewhere, takes nothing", () => {
    expect(upkeep([RIGGED], { plans: [{ rig: "other", inspectEvery: "1 day" }] }).lapses).toEqual([]);
    const elsewhere: Entries = [
      { ...RIGGED, rig: "other" },
      { date: "2026-06-01", event: "storm" },
    ];
    expect(upkeep(elsewhere).lapses).toEqual([]);
    const before: Entries = [
      { ...RIGGED, rig: "other" },
      { date: "2026-05-01", event: "storm" },
      { ...RIGGED, date: "2026-06-01", event: "moved" },
    ];
    expect(upkeep(before).lapses.map(({ kind }) => kind)).toEqual(["open"]);
  });

  it("a fall beyond plan asks for an inspection of webbing and part, and strengths stay as they were", () => {
    const entries: Entries = [RIGGED, { date: "2026-06-01", event: "hardFall", note: "two persons" }];
    const parts: WearDocument["parts"] = [
      { rig: "test rig", part: "leash", entries: [{ date: "2026-06-01", event: "hardFall" }] },
    ];
    const worn = applyWear(exampleRig(), recordOf(entries, { parts }), "2026-06-30");
    expect(worn.needsInspection).toHaveLength(2);
    expect(worn.needsInspection[0]).toMatchObject({
      code: "need.onNoted",
      values: { what: { code: "need.hardFall" }, since: { day: "2026-06-01" }, note: "two persons" },
    });
    expect(upkeep(entries, { parts }).lapses.map(({ of }) => of)).toEqual([
      { webbing: "red webbing" },
      { part: "leash" },
    ]);
  });

  it("refuses a plan that is none", () => {
    const faults = (plans: unknown) => {
      const reading = readWearRecord({ secondline: "wear/1", name: "r", plans });
      return reading.ok ? [] : reading.issues.map(({ path }) => path);
    };
    expect(faults([{ rig: "a", inspectEvery: "an age" }])).toEqual(["plans[0].inspectEvery"]);
    expect(faults([{ rig: "a", inspectEvery: "2 hours" }])).toEqual(["plans[0].inspectEvery"]);
    expect(faults([{ rig: "a", falls: -1 }])).toEqual(["plans[0].falls"]);
    expect(faults([{ rig: "a" }, { rig: "a" }])).toEqual(["plans[1].rig"]);
  });
});
