/** When an assessment lapses: one rule over the entries of a webbing or part, case by case. */
import { describe, expect, it } from "vitest";
import { ENTRY_KINDS, nextInspection, PART_ENTRY_KINDS } from "../src/index.ts";
import {
  ASK_FOR_INSPECTION,
  type BetweenInspections,
  type DatedEntry,
  fallsSinceInspection,
  lapseCauses,
} from "../src/wear/lapse.ts";

const ON = "2026-06-30";
const inspected = (date?: string, more: Partial<DatedEntry> = {}): DatedEntry => ({
  event: "inspected",
  judgement: "sound",
  ...(date === undefined ? {} : { date }),
  ...more,
});
const rigged: DatedEntry = { event: "rigged", date: "2026-04-01" };
const kinds = (entries: readonly DatedEntry[], between: BetweenInspections = {}, on = ON) =>
  lapseCauses(entries, between, on).map(({ kind }) => kind);

describe("a reason for an inspection", () => {
  it("is every entry that no factor covers, of webbing and of other parts", () => {
    const own = ["storm", "edgeContact", "hotRing", "ranHot", "hardFall"];
    expect([...ASK_FOR_INSPECTION].sort()).toEqual([...own].sort());
    const known = [...Object.keys(ENTRY_KINDS), ...Object.keys(PART_ENTRY_KINDS)];
    for (const event of own) expect(known).toContain(event);
  });

  it.each(ASK_FOR_INSPECTION)("%s lapses until somebody has looked after it", (event) => {
    const it = { event, date: "2026-06-10" } as const;
    expect(kinds([rigged, it])).toEqual(["open"]);
    expect(kinds([rigged, inspected("2026-06-09"), it])).toEqual(["open"]);
    expect(kinds([rigged, it, inspected("2026-06-11")])).toEqual([]);
    expect(kinds([rigged, it, inspected("2026-06-11"), { ...it, date: "2026-06-20" }])).toEqual(["open"]);
  });

  it.each([
    ["a re-tension", { event: "retensioned", date: "2026-06-10" }, ["tension"]],
    ["hanging it anew in the same rig", { event: "rigged", date: "2026-06-10", again: true }, ["tension"]],
    ["moving it in the same rig", { event: "moved", date: "2026-06-10", again: true }, ["tension"]],
    ["hanging it for the first time", { event: "moved", date: "2026-06-10" }, []],
    ["a fall that is counted", { event: "falls", date: "2026-06-10", falls: 400 }, []],
    ["damage that has a factor", { event: "damage", date: "2026-06-10" }, []],
    ["a reading", { event: "tensionReading", date: "2026-06-10" }, []],
    ["a judgement that it must come down", inspected("2026-06-10", { judgement: "unfit" }), ["unfit"]],
  ] as [string, DatedEntry, string[]][])("%s", (_, entry, expected) => {
    expect(kinds([rigged, entry])).toEqual(expected);
    expect(kinds([rigged, entry, inspected("2026-06-11")])).toEqual([]);
  });

  it("a tension set before the webbing was hung anew is gone, an event before that is not", () => {
    const before = [
      rigged,
      { event: "retensioned", date: "2026-05-01" },
      { event: "storm", date: "2026-05-02" },
    ] as const;
    expect(
      kinds([...before, { event: "takenDown", date: "2026-05-10" }, { event: "rigged", date: "2026-05-11" }]),
    ).toEqual(["open"]);
  });

  it("a part that was replaced carries nothing of the one before", () => {
    const hot = { event: "ranHot", date: "2026-06-01" } as const;
    expect(kinds([hot, { event: "replaced", date: "2026-06-02" }])).toEqual([]);
    expect(kinds([{ event: "replaced", date: "2026-06-01" }, hot])).toEqual(["open"]);
  });
});

describe("the order of days", () => {
  const storm: DatedEntry = { event: "storm", date: "2026-06-10" };
  it.each([
    ["looked at the day before", [inspected("2026-06-09"), storm], true],
    ["looked at on the same day, written before it", [inspected("2026-06-10"), storm], true],
    ["looked at on the same day, written after it", [storm, inspected("2026-06-10")], false],
    ["looked at the day after", [storm, inspected("2026-06-11")], false],
    ["looked at while it lasted", [{ ...storm, until: "2026-06-12" }, inspected("2026-06-11")], true],
    ["looked at on its last day", [{ ...storm, until: "2026-06-12" }, inspected("2026-06-12")], true],
    ["looked at after its last day", [{ ...storm, until: "2026-06-12" }, inspected("2026-06-13")], false],
    ["lasting on after the day that counts", [{ ...storm, until: "2026-07-09" }, inspected("2026-06-20")], true],
    ["without a date, looked at on the day that counts", [{ event: "storm" }, inspected(ON)], true],
    ["without a date of the look", [storm, inspected()], true],
    ["neither with a date", [{ event: "storm" }, inspected()], true],
    ["dated later than the day that counts", [{ ...storm, date: "2026-07-01" }], false],
    ["looked at later than the day that counts", [storm, inspected("2026-07-01")], true],
    ["both on the day that counts", [{ ...storm, date: ON }, inspected(ON)], false],
  ] as [string, DatedEntry[], boolean][])("a storm %s", (_, entries, lapsed) => {
    expect(kinds([rigged, ...entries])).toEqual(lapsed ? ["open"] : []);
  });

  it("a look at one stretch says nothing of another, nor of the whole", () => {
    const edge: DatedEntry = { event: "edgeContact", date: "2026-06-10", from: 20, to: 21 };
    expect(kinds([edge, inspected("2026-06-11", { from: 30, to: 40 })])).toEqual(["open"]);
    expect(kinds([edge, inspected("2026-06-11", { from: 20.5, to: 40 })])).toEqual(["open"]);
    expect(kinds([edge, inspected("2026-06-11", { from: 19, to: 22 })])).toEqual([]);
    expect(kinds([storm, inspected("2026-06-11", { from: 0, to: 60 })])).toEqual(["open"]);
  });

  it("no entry that is added with no date, or on a later day than the last look, ends a lapse", () => {
    const base = [rigged, inspected("2026-05-01"), storm];
    for (const event of ["storm", "hardFall", "retensioned", "falls", "shade"] as const) {
      expect(kinds([...base, { event }]).length).toBeGreaterThanOrEqual(1);
      expect(kinds([...base, { event, date: "2026-06-20" }])[0]).toBe("open");
    }
  });
});

describe("inspections that are due", () => {
  const monthly = { days: 30 };
  it.each([
    ["on its day", "2026-05-31", []],
    ["a day late", "2026-05-30", ["overdue"]],
    ["long ago", "2026-04-02", ["overdue"]],
  ] as [string, string, string[]][])("%s", (_, last, expected) => {
    expect(kinds([rigged, inspected(last)], monthly)).toEqual(expected);
  });

  it("are wanted once something hangs, and again once it is hung anew or replaced", () => {
    expect(kinds([rigged], monthly)).toEqual(["never"]);
    expect(kinds([inspected("2026-03-31"), rigged], monthly)).toEqual(["never"]);
    expect(kinds([inspected("2026-06-20"), { event: "replaced", date: "2026-06-21" }], monthly)).toEqual(["never"]);
    expect(kinds([rigged, inspected("2026-06-20", { from: 1, to: 2 })], monthly)).toEqual(["never"]);
    expect(kinds([rigged, inspected()], monthly)).toEqual(["never"]);
    expect(kinds([{ event: "rigged" }, inspected(ON)], monthly)).toEqual(["never"]);
  });

  it("count from the latest look, over the ends of months and years", () => {
    expect(nextInspection([rigged, inspected("2026-05-31"), inspected("2026-06-20")], monthly, ON)).toBe("2026-07-20");
    expect(nextInspection([inspected("2027-12-31")], { days: 60 }, "2028-01-01")).toBe("2028-02-29");
    expect(nextInspection([rigged, inspected("2026-06-20")], {}, ON)).toBeUndefined();
  });
});

describe("falls beyond what was planned", () => {
  const falls = (date: string | undefined, number: number): DatedEntry => ({
    event: "falls",
    falls: number,
    ...(date === undefined ? {} : { date }),
  });
  const planned = { falls: 40 };
  it("are counted since an inspection of the whole webbing or part", () => {
    const entries = [rigged, falls("2026-05-01", 30), inspected("2026-05-02"), falls("2026-06-01", 40)];
    expect(kinds(entries, planned)).toEqual([]);
    expect(lapseCauses([...entries, falls("2026-06-02", 1)], planned, ON)).toEqual([
      { kind: "falls", falls: 41, planned: 40 },
    ]);
    expect(fallsSinceInspection(entries, ON)).toBe(40);
  });

  it("count also without a date, and not before their day has come", () => {
    expect(kinds([falls(undefined, 41), inspected(ON)], planned)).toEqual(["falls"]);
    expect(kinds([falls("2026-07-01", 41)], planned)).toEqual([]);
    expect(kinds([falls("2026-06-01", 41), inspected("2026-06-02", { from: 1, to: 2 })], planned)).toEqual(["falls"]);
    expect(kinds([falls("2026-06-01", 1)], { falls: 0 })).toEqual(["falls"]);
  });
});
