/** The wear view's pure parts: the written record and its edits, drawings as numbers, and the way into the rig. */

import { readFileSync } from "node:fs";
import { labelHeights, roundTicks } from "@secondline/figures";
import { type Rig, readRig } from "@secondline/rig";
import { assess, rigOnLaterDays, study, takeDownDates } from "@secondline/scenarios";
import {
  type BreakTest,
  ENTRY_KINDS,
  PART_ENTRY_KINDS,
  readBreakLog,
  readTest,
  readWearRecord,
  testFields,
  wearState,
} from "@secondline/strength";
import { quantity, englishWords as words } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { untilWords } from "@secondline/words/until";
import { describe, expect, test } from "vitest";
import {
  addEntry,
  createWearStore,
  dayOf,
  entriesOf,
  isNamed,
  isoOf,
  type KeptWear,
  moveDate,
  movePlace,
  nameFor,
  type Owner,
  placeOf,
  removeEntry,
  replaceEntry,
  SITE_VALUES,
  siteOf,
  type WrittenRig,
  withSite,
} from "../src/index.ts";
import {
  calendarSpan,
  calendarTicks,
  flagWords,
  following,
  lanesOf,
  logText,
  messagesUnder,
  notTooShort,
  PART_KINDS,
  readWearText,
  staysOf,
  WEBBING_KINDS,
  withSurroundings,
} from "../src/record/index.ts";
import { demoDocument } from "./demoDocument.ts";
import { exampleLogText, exampleRecord, wearStart } from "./exampleWear.ts";
import { handSandbox } from "./handRunner.ts";

const ON = "2026-11-25";
const MAIN = { list: "webbings", index: 0 } as const;

function readExample() {
  const read = readWearRecord(exampleRecord);
  if (!read.ok) throw new Error(JSON.stringify(read.issues[0]));
  return read.record;
}

function demoRig(): { rig: Rig; document: WrittenRig } {
  const text = readFileSync(new URL("../../../demo-data/old-rig.json", import.meta.url), "utf8");
  const read = readRig(text);
  if (!read.ok) throw new Error(JSON.stringify(read.issues[0]));
  return { rig: read.rig, document: JSON.parse(text) };
}

describe("dates", () => {
  test("a date that does not exist is no date", () => {
    expect(dayOf("2026-02-30")).toBeUndefined();
    expect(dayOf("30 Feb")).toBeUndefined();
    expect(isoOf((dayOf("2026-02-28") ?? 0) + 1)).toBe("2026-03-01");
  });
  test("the calendar has marks at month borders and no more than fit", () => {
    const [from, to] = [dayOf("2025-03-20") ?? 0, dayOf("2027-03-20") ?? 0];
    const ticks = calendarTicks(from, to, 10);
    expect(ticks.length).toBeLessThanOrEqual(10);
    expect(ticks.filter(({ year }) => year).map(({ label }) => label)).toEqual(["2026", "2027"]);
  });
});

describe("entries", () => {
  const entries = entriesOf(exampleRecord, MAIN);
  const falls = entries.findIndex(({ event }) => event === "falls");

  test("an entry moved along the webbing keeps its length and stays on the webbing", () => {
    const entry = entries[falls]!;
    expect(placeOf(movePlace(entry, 2.5, 75, "whole"))).toEqual({ from: 30.5, to: 38.5 });
    expect(placeOf(movePlace(entry, 100, 75, "whole"))).toEqual({ from: 67, to: 75 });
    expect(placeOf(movePlace(entry, -100, 75, "from"))).toEqual({ from: 0, to: 36 });
    expect(placeOf(movePlace(entry, -100, 75, "to"))).toEqual({ from: 28, to: 28.01 });
  });
  test("an entry moved to another day takes its place in the order and takes its end along", () => {
    const clamp = { date: "2026-01-10", event: "clamped", at: "10 m", length: "0.2 m", until: "2026-02-01" };
    expect(moveDate(clamp, 30)).toMatchObject({ date: "2026-02-09", until: "2026-03-03" });
    const last = entries.length - 1;
    const { record, entry } = replaceEntry(exampleRecord, MAIN, last, moveDate(entries[last]!, -40));
    expect(entry).toBeLessThan(last);
    expect(readWearRecord(record).ok).toBe(true);
  });
  test("a date that is being typed leaves the order alone", () => {
    const { entry } = replaceEntry(exampleRecord, MAIN, 3, { ...entries[3]!, date: "202" });
    expect(entry).toBe(3);
  });
  test("lanes hold what weblocks left besides what was written down, and draw no entry twice", () => {
    const state = wearState(readExample(), ON).webbings[0]!;
    const lanes = lanesOf(entries, state, ON);
    expect(lanes.map(({ name }) => name)).toEqual(["Hung", "Falls", "Clamps", "Sewn, damaged"]);
    expect(lanes[2]?.items).toHaveLength(6);
    const written = lanes.flatMap(({ items }) => items.flatMap(({ entry }) => (entry === undefined ? [] : [entry])));
    expect(new Set(written).size).toBe(written.length);
  });
  test("a webbing hangs from rigging to taking down, and the last stay is open", () => {
    expect(staysOf(entries).map(({ from, to }) => [isoOf(from), to === undefined ? "still" : isoOf(to)])).toEqual([
      ["2025-04-12", "2026-06-12"],
      ["2026-07-04", "still"],
    ]);
    expect(staysOf(entries).at(-1)!.title).toMatch(/4 Jul 2026/);
  });
});

describe("drawing", () => {
  test("round marks and labels apart", () => {
    expect(roundTicks(0, 75, 8)).toEqual([0, 10, 20, 30, 40, 50, 60, 70]);
    const heights = labelHeights([50, 52, 10]);
    expect(heights[1]! - heights[0]!).toBeGreaterThanOrEqual(15);
    expect(heights[2]).toBe(10);
  });
  test("the calendar holds every entry, the day shown and the take-down date", () => {
    const [from, to] = calendarSpan([100, 400], 420, [600]);
    expect(from).toBeLessThan(100);
    expect(to).toBeGreaterThan(600);
  });
});

test("the old clamp mark is told by how far it lies inside the span", () => {
  const state = wearState(readExample(), ON);
  const words = flagWords(state.webbings[0]!, state.flags).map(({ headline }) => headline);
  expect(words).toContain("Old clamp mark of 14 months lies 4.3 m inside the span from A.");
  // Two entries of falls at one place are one place.
  expect(words.filter((line) => line.startsWith("Fall zone"))).toEqual([
    "Fall zone of an earlier rigging, 95 falls, lies 30.3 m inside the span from A.",
  ]);
});

describe("files", () => {
  test("a log with a bad row is refused whole, every row by its line", () => {
    const lines = exampleLogText.split("\n");
    const bad = [
      ...lines.slice(0, 3),
      lines[3]!.replace(",9.9,", ",-9.9,"),
      lines[4]!,
      lines[5]!.replace(",dry,", ",damp,"),
      ...lines.slice(6),
    ];
    const opened = readWearText(bad.join("\n"), "bad.csv");
    if (opened.kind !== "logFaults") throw new Error(`it was taken as ${opened.kind}`);
    expect(opened.faults.map(({ line, column }) => [line, column])).toEqual([
      [4, "result"],
      [6, "wet"],
    ]);
  });
  test("a log comes back as it was saved, and an invented one still says so", () => {
    const opened = readWearText(exampleLogText, "break-log.csv");
    if (opened.kind !== "log") throw new Error(`it was taken as ${opened.kind}`);
    const again = readWearText(logText(opened.log), "again.csv");
    if (again.kind !== "log") throw new Error(`it was taken as ${again.kind}`);
    expect(again.log.invented).toBe(true);
    const bare = ({ line: _, ...rest }: (typeof again.log.tests)[number]) => rest;
    expect(again.log.tests.map(bare)).toEqual(opened.log.tests.map(bare));
    expect(readBreakLog(logText(opened.log)).ok).toBe(true);
  });
  test("another app's JSON and broken JSON are refused in words", () => {
    expect(readWearText('{"scenes": []}', "other.json").kind).toBe("refused");
    expect(readWearText("{", "broken.json").kind).toBe("refused");
  });
});

describe("the stretch in sight", () => {
  test("is never shorter than anybody measures, and stays on the webbing", () => {
    const close = notTooShort({ from: 10, to: 10.1 }, 75);
    expect(close.to - close.from).toBeCloseTo(0.5, 9);
    expect((close.from + close.to) / 2).toBeCloseTo(10.05, 9);
    expect(notTooShort({ from: 10, to: 20 }, 75)).toEqual({ from: 10, to: 20 });
  });
  test("shows a place with webbing on both sides of it", () => {
    const sight = withSurroundings({ from: 5.8, to: 6.2 }, 75);
    expect(sight.from).toBeLessThan(5);
    expect(sight.to).toBeGreaterThan(7);
    expect(withSurroundings({ from: 0, to: 0.4 }, 75).from).toBe(0);
  });
  test("follows an entry that is moved out of it, and only then", () => {
    const sight = { from: 10, to: 20 };
    expect(following(sight, { from: 19, to: 25 }, 75)).toBe(sight);
    expect(following(sight, { from: 29, to: 31 }, 75)).toEqual({ from: 25, to: 35 });
  });
});

describe("until when it may stay up", () => {
  const { rig } = demoRig();
  const record = readExample();
  const read = assess({ rig, wear: record, on: ON });
  if (!read.ok) throw new Error(JSON.stringify(read.issues[0]));
  const { assessed } = read;
  const work = study(assessed, { accuracy: "quick", size: "quick" });
  let step = work.next();
  while (!step.done) step = work.next();
  const { outcome, demands } = step.value;
  const rigOn = rigOnLaterDays({ rig, wear: record, on: ON })!;
  const outlook = takeDownDates({ on: ON, rigOn, events: demands, whole: outcome.search.complete });

  test("the dates and the verdict of one day never contradict each other, part by part", () => {
    for (const { part, when, fails, marginNow, required } of outlook.parts) {
      const { verdict, byClass, governing } = outcome.parts.find(({ id }) => id === part)!;
      expect([part, when === "now"]).toEqual([part, verdict === "fails" || verdict === "thin"]);
      if (when === "now") expect([part, fails]).toEqual([part, verdict === "fails"]);
      expect(quantity.margin(marginNow)).toBe(quantity.margin(byClass[governing!]!.margin));
      if (when === "now") expect(required).toBe(byClass[governing!]!.required);
    }
    expect(outlook.parts.map(({ part }) => part).toSorted()).toEqual(
      outcome.parts.flatMap(({ id, governing }) => (governing ? [id] : [])).toSorted(),
    );
  });
  test("every part that is below what is required already is named", () => {
    const below = outlook.parts.filter(({ when }) => when === "now");
    const said = untilWords.sentence(assessed.rig, outlook, outcome);
    expect(below.length).toBeGreaterThan(1);
    for (const { part } of below) expect(said.toLowerCase()).toContain(words.partName(rig, part).toLowerCase());
    expect(untilWords.short(outlook)).toBe("below what is required");
  });
  test("what somebody must hold is named by the id of a rig, else by its name", () => {
    expect([isNamed(rig, rig.name), isNamed(rig, "another rig")]).toEqual([true, false]);
    expect(isNamed({ ...rig, id: "ridge" } as Rig, "ridge")).toBe(true);
    expect(nameFor(rig)).toBe((rig as { id?: string }).id ?? rig.name);
  });
});

describe("the store", () => {
  const make = (kept?: KeptWear) => {
    const { sandbox } = handSandbox(demoDocument(), kept ? { session: { wear: kept } } : {});
    const { store, actions } = createWearStore(sandbox, wearStart());
    const { undo } = sandbox.actions;
    return { store, actions: { ...actions, undo }, sandbox, kept: () => sandbox.store.getState().session.wear };
  };

  test("a fault is told and the last good record still counts", () => {
    const { store, actions } = make();
    const before = store.getState().good;
    const bad = replaceEntry(exampleRecord, MAIN, 1, { ...entriesOf(exampleRecord, MAIN)[1]!, from: "400 m" });
    actions.edit(bad.record, "falls changed");
    expect(store.getState().issues.map(({ path }) => path)).toContain("webbings[0].entries[1].from");
    expect(store.getState().good).toBe(before);
    actions.undo();
    expect(store.getState().issues).toEqual([]);
    expect(store.getState().work.record).toBe(exampleRecord);
  });
  test("where it hangs is put and undone, and one that the format does not know is told beside its field", () => {
    const { store, actions } = make();
    const record = () => store.getState().work.record;
    const started = siteOf(record(), "latitude");
    actions.edit(withSite(record(), "latitude", "high"), "where it hangs", "site.latitude");
    expect(store.getState().good.record.latitude).toBe("high");
    actions.edit(withSite(record(), "latitude", "60"), "where it hangs", "site.latitude.2");
    expect(messagesUnder(store.getState().issues, "latitude")).toEqual([
      'This is "60"; one of "low", "middle", "high" is needed here.',
    ]);
    expect(store.getState().good.record.latitude).toBe("high");
    actions.undo();
    expect(store.getState().issues).toEqual([]);
    actions.undo();
    expect(siteOf(record(), "latitude")).toBe(started);
    expect(record()).toBe(exampleRecord);
    const open = withSite(exampleRecord, "hemisphere", "");
    expect("hemisphere" in open).toBe(false);
    expect(withSite(open, "hemisphere", "south").hemisphere).toBe("south");
  });
  test("every place that the form offers can be read", () => {
    for (const key of ["latitude", "hemisphere"] as const)
      for (const value of SITE_VALUES[key]) expect(readWearRecord(withSite(exampleRecord, key, value)).ok).toBe(true);
  });
  test("what is replaced is kept, and all of it comes back after a reload", () => {
    const { actions, kept } = make();
    actions.replace({ record: { secondline: "wear/1", name: "Mine", webbings: [] } }, "a new record");
    const reloaded = make(structuredClone(kept()!));
    expect(reloaded.store.getState().work.record.name).toBe("Mine");
    expect(reloaded.store.getState().earlier.map(({ name }) => name)).toEqual([exampleRecord.name]);
  });
  test("the letters of one field are one step", () => {
    const { store, actions } = make();
    for (const from of ["2", "29", "29 m"]) {
      const { record } = replaceEntry(store.getState().work.record, MAIN, 1, {
        ...entriesOf(exampleRecord, MAIN)[1]!,
        from,
      });
      actions.edit(record, "falls changed", "field");
    }
    actions.undo();
    expect(store.getState().work.record).toBe(exampleRecord);
  });
  test("an entry taken away by undo is not edited further", () => {
    const { store, actions } = make();
    const added = addEntry(exampleRecord, MAIN, { date: ON, event: "falls", from: "1 m", to: "5 m", falls: 1 });
    actions.edit(added.record, "an entry added");
    actions.look({ entry: added.entry });
    actions.undo();
    expect(store.getState().entry).toBeUndefined();
  });
  test.each([
    ...WEBBING_KINDS.map((kind) => ({ owner: MAIN as Owner, kind })),
    ...PART_KINDS.map((kind) => ({ owner: { list: "parts", index: 0 } as Owner, kind })),
  ])("$owner.list: $kind.label is added, changed, moved, removed, and each is undone", ({ owner, kind }) => {
    const { store, actions } = make();
    const record = () => store.getState().work.record;
    const steps = [record()];
    const take = (next: ReturnType<typeof record>) => {
      actions.edit(next, kind.label);
      steps.push(next);
    };
    const added = addEntry(record(), owner, { date: ON, event: kind.event, ...kind.fresh });
    take(added.record);
    // A fresh entry can be read but for the name of the rig, which nobody can guess, and what the order of events forbids.
    const path = `${owner.list}[${owner.index}].entries[${added.entry}]`;
    const told = store.getState().issues.filter((issue) => issue.path.startsWith(path));
    expect(told.filter(({ message }) => /unknown|must be|expected/i.test(tellFault(message)))).toEqual([]);

    let at = added.entry;
    const entry = () => entriesOf(record(), owner)[at]!;
    const dated = replaceEntry(record(), owner, at, moveDate(entry(), 3));
    at = dated.entry;
    take(dated.record);
    expect(entry().date).toBe("2026-11-28");
    const place = placeOf(entry());
    if (place) {
      const moved = replaceEntry(record(), owner, at, movePlace(entry(), 1, 75, "whole"));
      take(moved.record);
      expect(placeOf(entry())!.from).toBeCloseTo(place.from + 1, 6);
    }
    take(removeEntry(record(), owner, at));
    expect(entriesOf(record(), owner)).toEqual(entriesOf(exampleRecord, owner));
    for (const before of steps.slice(0, -1).reverse()) {
      actions.undo();
      expect(record()).toBe(before);
    }
  });
  test.each([
    ["webbings", WEBBING_KINDS, ENTRY_KINDS],
    ["parts", PART_KINDS, PART_ENTRY_KINDS],
  ] as const)("every entry of %s that the format has can be added, with all of its fields", (_, kinds, known) => {
    expect(kinds.map(({ event }) => event).sort()).toEqual(Object.keys(known).sort());
    for (const { event, fields } of kinds) {
      const { schema } = known[event as keyof typeof known] as { schema: { shape: object } };
      const keys = Object.keys(schema.shape).filter((key) => key !== "date" && key !== "event");
      expect([event, fields.map(({ key }) => key).sort()]).toEqual([event, keys.sort()]);
    }
  });
  test("a reading's place is the walker's, and none on the webbing", () => {
    expect(placeOf({ date: ON, event: "tensionReading", tension: "3 kN", at: "0.5" })).toBeUndefined();
  });
  test("a break test is changed in its place, keeps where it came from, and undo brings it back", () => {
    const { store, actions } = make();
    const tests = () => store.getState().work.log.tests;
    const count = tests().length;
    const before = tests()[1]!;
    const read = readTest({ ...testFields(before), result: "28.8", state: "used" }, 0);
    if (!read.ok) throw new Error(JSON.stringify(read.faults[0]));
    actions.look({ test: { index: 1, editing: true } });
    actions.changeTest(1, read.value);
    expect(tests()[1]).toEqual({ ...before, state: "used", result: { kind: "exact", value: 28_800 } });
    // The form is closed: what is written in it has become another test.
    expect(store.getState().test).toBeUndefined();
    actions.undo();
    expect(tests()[1]).toBe(before);
    actions.look({ test: { index: 1, editing: true } });
    actions.removeTest(0);
    expect(store.getState().test).toBeUndefined();
    actions.undo();
    expect(tests()).toHaveLength(count);
  });
  test("every test of the example comes back from its fields as it was", () => {
    const { tests } = make().store.getState().work.log;
    for (const one of tests) {
      const read = readTest(testFields(one), 0);
      const { line: _, invented: __, ...bare }: BreakTest = one;
      expect(read).toEqual({ ok: true, value: bare });
    }
  });
  test("another webbing is seen from end to end", () => {
    const { store, actions } = make();
    actions.look({ along: { from: 10, to: 20 } });
    actions.look({ entry: 1 });
    expect(store.getState().along).toEqual({ from: 10, to: 20 });
    actions.look({ owner: { list: "webbings", index: 1 } });
    expect(store.getState().along).toBeUndefined();
  });
});
