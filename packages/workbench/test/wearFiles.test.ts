/** Records and logs from files, what takes the place of what, and what is told of tests and dates. */
import { GENERIC_STOCKS } from "@secondline/rig";
import { analyseBreakLog, type BreakTest, readBreakLog } from "@secondline/strength";
import { groupTitle } from "@secondline/words/breakLog";
import { describe, expect, it } from "vitest";
import { readLogTable, suggestMatch, type WearWork } from "../src/index.ts";
import {
  createWearFiles,
  earlierReplacements,
  exampleLogOf,
  FIT_HEADS,
  fitNotes,
  fitRows,
  fitsTitle,
  gainWords,
  groupNumbers,
  matchState,
  materialWords,
  previewHeads,
  previewRows,
  sameOptions,
  sourceChoice,
  strangeWords,
  takeDownMark,
  testLine,
  testsTakenWords,
  wearReplacements,
  wearStartWith,
  withSource,
  zoneRows,
} from "../src/record/index.ts";
import { exampleLogText, exampleRecord } from "./exampleWear.ts";

const file = (name: string, text: string) => ({ name, size: text.length, text: async () => text });
const FOREIGN = `Day;Webbing;Piece;Condition;Max load (lbf);Ended
2026-07-04;Polyester webbing 25 mm;webbing;used;6744.3;Break
`;

function desk(shelf: Partial<Storage> = {}) {
  const kept = new Map<string, string>();
  const said: string[] = [];
  const replaced: Partial<WearWork>[] = [];
  const looked: unknown[] = [];
  const files = createWearFiles({
    page: { announce: (text) => void said.push(text), tell: ({ text }) => void said.push(`! ${text}`) },
    wear: { replace: (part) => void replaced.push(part), look: (part) => void looked.push(part) },
    shelf: () => ({
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text),
      removeItem: () => undefined,
      ...shelf,
    }),
  });
  return { files, said, replaced, looked, state: () => files.store.getState() };
}

describe("a file that is opened", () => {
  it("takes the place of the record or of the log, and comes into sight", async () => {
    const { files, said, replaced, looked } = desk();
    await files.open(file("mine.json", JSON.stringify(exampleRecord)));
    await files.open(file("mine.csv", exampleLogText));
    expect(replaced.map((part) => Object.keys(part))).toEqual([["record"], ["log"]]);
    expect(looked).toEqual([{ page: "record" }, { page: "log" }]);
    expect(said).toHaveLength(2);
  });

  it("that is neither changes nothing, and is told", async () => {
    const { files, said, replaced } = desk();
    await files.open(file("film.json", "{"));
    expect([said.length, said[0]!.startsWith("!"), replaced.length]).toEqual([1, true, 0]);
  });

  it("with bad rows is refused with all of them until that is closed", async () => {
    const { files, replaced, state } = desk();
    await files.open(file("bad.csv", exampleLogText.replace(",9.9,", ",-9.9,")));
    expect(state().refused?.faults).toHaveLength(1);
    files.closeRefused();
    expect([state().refused, replaced.length]).toEqual([undefined, 0]);
  });

  it("with columns of its own is matched first; what was matched is remembered for the next one", async () => {
    const { files, replaced, state } = desk();
    await files.open(file("own.csv", FOREIGN));
    expect(state().matching).toMatchObject({ file: "own.csv", remembered: false });
    const first = state().matching!.first;
    files.take([], { ...first, dates: "dmy" });
    expect(replaced).toEqual([{ log: { name: "own", invented: false, tests: [] } }]);
    expect(state().matching).toBeUndefined();
    await files.open(file("own.csv", FOREIGN));
    expect(state().matching).toMatchObject({ remembered: true, first: { dates: "dmy" } });
    files.leaveMatching();
    files.take([], first);
    expect(replaced).toHaveLength(1);
  });

  it("is taken though the device has no room to remember how", async () => {
    const { files, said, replaced } = desk({
      setItem: () => {
        throw new Error("full");
      },
    });
    await files.open(file("own.csv", FOREIGN));
    files.take([], desk().state().matching?.first ?? suggestMatch(table()));
    expect(replaced).toHaveLength(1);
    expect(said.at(-1)).toMatch(/^! .*full/);
  });
});

function table() {
  const read = readLogTable(FOREIGN);
  if (!read.ok) throw new Error(read.fault.kind);
  return read.table;
}

/** A table of pulls with these loads, matched; a load that is none has a wrong day beside it. `ended`: the word of the first row. */
function matchedPulls(loads: readonly string[], ended = "broke") {
  const rows = loads.map((load, i) =>
    ["webbing", /\d/.test(load) ? "2026-06-05" : "5 Jun", "red", "new", "dry", i === 0 ? ended : "broke", load].join(
      ",",
    ),
  );
  const read = readLogTable(`Piece,Day,Webbing,Condition,Wet,Ended,Load [kN]\n${rows.join("\n")}\n`);
  if (!read.ok) throw new Error(read.fault.kind);
  return matchState(read.table, suggestMatch(read.table));
}

describe("columns that are matched", () => {
  const match = suggestMatch(table());

  it("are chosen of those of the file, and what the log cannot do without is told", () => {
    const wet = sourceChoice(table(), match, "wet");
    expect(wet.isMissing).toBe(true);
    expect(wet.options.map(({ label }) => label)).toEqual(expect.arrayContaining([...table().columns]));
    expect(sourceChoice(table(), match, "result")).toMatchObject({ isMissing: false, value: "Max load (lbf)" });
    expect(matchState(table(), match)).toMatchObject({ tests: undefined, missing: ["wet"] });
  });

  it("can stand for every row, or come from nowhere", () => {
    const [none, same] = sourceChoice(table(), match, "wet").options;
    const all = withSource(table(), match, "wet", same!.value);
    expect(all.columns.wet).toEqual({ same: "" });
    expect(withSource(table(), all, "wet", none!.value).columns).not.toHaveProperty("wet");
    expect(withSource(table(), match, "wet", "Ended").columns.wet).toEqual({ column: "Ended" });
    expect(sameOptions("wet")?.map(({ value }) => value)).toEqual(["", "dry", "wet"]);
    expect(sameOptions("batch")).toBeUndefined();
  });

  it("take a unit from the name of the loads' column, and lose it with that column; dates in the only order in which they are days", () => {
    const foreign = "Tag;Kraft;Bruchlast (daN);Zug (kN)\n31.12.2026;2300;2310;23.1\n05.06.2026;2200;2290;22.9\n";
    const read = readLogTable(foreign);
    if (!read.ok) throw new Error(read.fault.kind);
    const { table: own } = read;
    const first = suggestMatch(own);
    expect(first.columns.unit).toBeUndefined();
    const inDaN = withSource(own, first, "result", "Bruchlast (daN)");
    expect(inDaN.columns.unit).toEqual({ same: "daN" });
    expect(withSource(own, inDaN, "result", "Zug (kN)").columns.unit).toEqual({ same: "kN" });
    expect(withSource(own, inDaN, "result", "Kraft").columns).not.toHaveProperty("unit");
    const said = { ...inDaN, columns: { ...inDaN.columns, unit: { same: "lbf" } } };
    expect(withSource(own, said, "result", "Zug (kN)").columns.unit).toEqual({ same: "lbf" });
    expect(withSource(own, first, "date", "Tag").dates).toBe("dmy");
    const either = { ...own, rows: own.rows.slice(1) };
    expect(withSource(either, first, "date", "Tag").dates).toBe("ymd");
  });

  it("ask for words that nobody knows, then say how many tests they come to", () => {
    const dry = { ...match, columns: { ...match.columns, wet: { same: "dry" } } };
    expect(strangeWords(table(), dry).map(({ text }) => text)).toEqual(["Break"]);
    expect(materialWords(table(), dry)).toMatchObject([{ value: "polyester-webbing-25" }]);
    const known = { ...dry, words: { outcome: [{ text: "Break", means: "broke" }] } };
    const state = matchState(table(), known);
    expect(state.tests).toHaveLength(1);
    expect(state.words).toContain("1");
    const [row] = previewRows(state);
    expect(row!.cells).toHaveLength(previewHeads(state).length);
    expect(row!.cells.at(-1)).toMatch(/^30\.0.*kN$/);
  });

  it("show the good rows beside a bad one, which stands as in the file with the reason; no row of the file is taken", () => {
    const state = matchedPulls(["31.2", "none", "30.1"]);
    expect(state.tests).toBeUndefined();
    expect(state.words).toMatch(/^1 of 3 rows has a fault\. No row is taken, not even a good one/);
    const rows = previewRows(state);
    expect(rows.map(({ bad }) => bad)).toEqual([false, true, false]);
    expect(previewHeads(state).at(-1)).toBe("Not taken, because");
    for (const { cells } of rows) expect(cells).toHaveLength(previewHeads(state).length);
    expect(rows[1]!.cells.slice(0, 3)).toEqual(["✕ 3", "5 Jun", "webbing"]);
    expect(rows[1]!.cells.slice(-2)).toEqual(["none", expect.stringMatching(/^Day: .*5 Jun.* Load \[kN\]: .*none/)]);
    expect([rows[0], rows[2]].map((row) => row!.cells.slice(-2))).toEqual([
      ["31.2 kN", ""],
      ["30.1 kN", ""],
    ]);
  });

  it("show every word that has no meaning yet in its row, and the rows beside it as they are read", () => {
    const state = matchedPulls(["31.2", "30.1"], "snapped");
    const rows = previewRows(state);
    expect(rows.map(({ bad }) => bad)).toEqual([true, false]);
    expect(rows[0]!.cells.at(-1)).toBe("A word in it has no meaning yet.");
    expect(state).toMatchObject({ tests: undefined, words: expect.stringContaining("no row is taken") });
  });

  it("count the bad rows that are not shown, however many there are", () => {
    const state = matchedPulls(["30", ...Array.from({ length: 80 }, () => "x"), "30"]);
    const bad = previewRows(state).filter((row) => row.bad);
    expect(bad.length + state.moreBad).toBe(80);
    expect(bad.every(({ cells }) => cells.at(-1) !== "")).toBe(true);
    expect(state.words).toMatch(/^80 of 82 rows have a fault/);
    expect(state.elsewhere).toEqual([]);
  });

  it("offer the webbings of the open rig besides the built-in ones, and a test tells either by its name", () => {
    const dry = { ...match, columns: { ...match.columns, wet: { same: "dry" } } };
    const own = [{ ...GENERIC_STOCKS.get("polyester-webbing-25")!, id: "own-red", name: "Red tape" }];
    const [choice] = materialWords(table(), dry, own);
    expect(choice!.options[1]).toEqual({ value: "own-red", label: "Red tape" });
    const known = { ...dry, words: { outcome: [{ text: "Break", means: "broke" }] } };
    const [test] = matchState(table(), known).tests!;
    expect(groupTitle(test!)).toContain(", Polyester webbing 25 mm, ");
    expect(groupTitle({ ...test!, material: "own-red" }, own)).toContain(", Red tape, ");
    expect(groupTitle({ ...test!, material: "a drawer's" }, own)).toContain(", a drawer's, ");
  });
});

describe("a wear view", () => {
  it("begins with the examples, which say that they are made up", () => {
    const log = exampleLogOf(exampleLogText);
    expect(log.invented).toBe(true);
    expect(log.tests.length).toBeGreaterThan(10);
    expect(exampleLogOf("no log at all").tests).toEqual([]);
    expect(wearStartWith(exampleRecord, log, () => 7)).toMatchObject({ example: { record: exampleRecord, log } });
  });

  it("can begin anew, or go back to what was replaced", () => {
    const log = exampleLogOf(exampleLogText);
    const four = wearReplacements({ record: exampleRecord, log: () => log });
    expect(four.map(({ part }) => Object.keys(part())[0])).toEqual(["record", "log", "record", "log"]);
    expect(new Set(four.map(({ step }) => step)).size).toBe(4);
    const work = { record: exampleRecord, log, stocks: {} };
    const [earlier] = earlierReplacements([{ name: "Old one", replaced: 0, work }]);
    expect(earlier).toMatchObject({ label: expect.stringContaining("Old one") });
    expect(earlier!.part()).toBe(work);
  });
});

describe("what is told", () => {
  const tests = (() => {
    const read = readBreakLog(exampleLogText);
    if (!read.ok) throw new Error(JSON.stringify(read.faults[0]));
    return read.tests;
  })();
  const report = analyseBreakLog(tests).groups.find(({ families }) => families.length > 0)!;

  it("of a group are the surer bounds first, strengths rounded down, and how many tests there are", () => {
    const rows = groupNumbers(report);
    expect(rows.slice(0, 2).map(({ strong }) => strong)).toEqual([true, true]);
    const [at75, at95] = rows.map(({ value }) => Number.parseFloat(value));
    expect(1000 * at75!).toBeLessThanOrEqual(report.characteristic.at75.value);
    expect(1000 * at95!).toBeLessThanOrEqual(report.characteristic.at95.value);
    expect(rows.at(-1)!.value).toBe(String(report.tests.length));
  });

  it("of its fits has a cell under every head, and what more tests would be worth", () => {
    for (const row of fitRows(report)) expect(row).toHaveLength(FIT_HEADS.length);
    expect(fitRows(report)).toHaveLength(report.families.length);
    expect(fitNotes({ ...report, failures: [], batches: undefined } as never)).toEqual([]);
    expect(gainWords([])).not.toBe(gainWords(report.narrowing));
    expect(fitsTitle([])).not.toBe(fitsTitle([{ more: 1, value: 9000, gain: 120 } as never]));
    expect(fitsTitle([{ more: 1, value: 9000, gain: 120 } as never])).toContain("0.12 kN");
  });

  it("of a test is its day, what came of it, and all that was noted", () => {
    const test = { ...tests[0]!, date: "2026-07-04", batch: "7", note: "odd" } as BreakTest;
    expect(testLine(test)).toMatch(/^4 Jul 2026: .*7.*odd$/);
    const { date: _, ...undated } = test;
    expect(testLine(undated as BreakTest)).not.toContain("2026");
  });

  it("of tests that do not count says whether somebody left them out", () => {
    const assessed = { taken: { tests: undefined } } as never;
    const [out, not] = [true, false].map((leftOut) => testsTakenWords({ assessed, leftOut }, 25));
    expect(out).not.toBe(not);
    expect(not).toContain("25");
  });

  it("of a take-down date is its day, and nothing where there is none", () => {
    expect(takeDownMark(undefined)).toBeUndefined();
    expect(takeDownMark({ date: undefined, parts: [], horizon: "2028-11-30" } as never)).toBeUndefined();
  });

  const BASIS = { kind: "published", note: "" };
  it("of strength along a webbing is a row for every zone, rounded down", () => {
    const zone = { from: 0, to: 6, strength: 9999, strength5: 8888, reason: "webbing", ratedBasis: BASIS, factors: [] };
    const [row] = zoneRows([zone as never]);
    expect(row).toHaveLength(6);
    expect(Number.parseFloat(row![2]!)).toBeLessThanOrEqual(8.888);
  });
});
