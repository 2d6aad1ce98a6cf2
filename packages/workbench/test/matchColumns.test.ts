import { readBreakLog } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import {
  type ColumnMatch,
  columnMatchSchema,
  isMatched,
  type LogTable,
  logTemplate,
  missingColumns,
  readLogTable,
  readMatched,
  suggestMatch,
  wordsIn,
} from "../src/index.ts";

const tableOf = (text: string): LogTable => {
  const read = readLogTable(text);
  if (!read.ok) throw new Error(read.fault.kind);
  return read.table;
};

/** As a spreadsheet of somebody's saves it: semicolons, decimal commas, own names and words. */
const OWN = `Test date;Webbing;Piece;Condition;Max load (lbf);Ended;Remarks
04.07.2026;Polyester webbing 25 mm;webbing;used;6744,3;Break;
05.07.2026;red tape;webbing;new;7000;no break;"stopped,
machine limit"
`;

describe("somebody's own table of break tests", () => {
  it("is matched where its names say what they are, and its unit only where they state it", () => {
    const table = tableOf(OWN);
    expect(isMatched(table)).toBe(false);
    const match = suggestMatch(table);
    expect(match.columns).toMatchObject({
      date: { column: "Test date" },
      material: { column: "Webbing" },
      part: { column: "Piece" },
      state: { column: "Condition" },
      result: { column: "Max load (lbf)" },
      outcome: { column: "Ended" },
      unit: { same: "lbf" },
      note: { column: "Remarks" },
    });
    expect(missingColumns(match)).toEqual(["wet"]);
    const silent = suggestMatch(tableOf("part,load\nwebbing,3000\n"));
    expect(silent.columns.unit).toBeUndefined();
    expect(missingColumns(silent)).toContain("unit");
  });

  it("is read through the checks of every log, with materials by their names and dates in their order", () => {
    const table = tableOf(OWN);
    const match: ColumnMatch = {
      ...suggestMatch(table),
      dates: "dmy",
      words: {
        outcome: [
          { text: "Break", means: "broke" },
          { text: "no break", means: "stopped" },
        ],
      },
    };
    match.columns.wet = { same: "dry" };
    const read = readMatched(table, match);
    if (!read.ok) throw new Error(JSON.stringify(read.faults[0]));
    const [first, second] = read.tests;
    expect(first).toMatchObject({
      date: "2026-07-04",
      material: "polyester-webbing-25",
      outcome: "broke",
      wet: false,
      line: 2,
    });
    expect(first!.result).toMatchObject({ kind: "exact" });
    expect(first!.result.kind === "exact" && first!.result.value).toBeCloseTo(6744.3 * 4.4482216, 0);
    expect(second).toMatchObject({ material: "red tape", result: { kind: "above" }, note: "stopped, machine limit" });
  });

  it("names its own lines and columns in faults, and takes nothing", () => {
    const table = tableOf(
      "# Invented\n\nPiece,Webbing,Condition,Wet,Ended,Load\nwebbing,red,new,dry,broke,31.2\nwebbing,red,new,dry,broke,x\n",
    );
    const match = suggestMatch(table);
    match.columns.unit = { same: "kN" };
    const read = readMatched(table, match);
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.faults.map(({ line, column }) => `${line} ${column}`)).toEqual(["5 Load"]);
    const good = readMatched({ ...table, rows: table.rows.slice(0, 1) }, match);
    expect(good.ok && good.tests).toMatchObject([{ invented: true, line: 4 }]);
  });

  it("asks about words that it does not know, each once", () => {
    const table = tableOf(OWN);
    expect(wordsIn(table, suggestMatch(table), "outcome")).toEqual([
      { text: "Break", means: undefined },
      { text: "no break", means: undefined },
    ]);
    expect(wordsIn(table, suggestMatch(table), "material")).toEqual([
      { text: "Polyester webbing 25 mm", means: "polyester-webbing-25" },
      { text: "red tape", means: "red tape" },
    ]);
  });

  it("is parted by what parts its names, though every number has a comma", () => {
    const { columns, rows } = tableOf("Webbing;Load\nred;31,2\nred;30,1\n");
    expect(columns).toEqual(["Webbing", "Load"]);
    expect(rows.map(({ cells }) => cells)).toEqual([
      ["red", "31,2"],
      ["red", "30,1"],
    ]);
    expect(tableOf('"Load; kN",State\n3,new\n').columns).toEqual(["Load; kN", "State"]);
  });

  it("may have titles above its names", () => {
    const read = readLogTable("Pulls, of the club\n\n;;\nDay;Load [kN];What\n2026-01-02;10,4;leash\n");
    expect(read.ok && read.table).toEqual({
      columns: ["Day", "Load [kN]", "What"],
      remarks: ["Pulls, of the club"],
      rows: [{ cells: ["2026-01-02", "10,4", "leash"], line: 5 }],
    });
  });

  it("is told when it is none", () => {
    expect(readLogTable("")).toEqual({ ok: false, fault: { kind: "empty" } });
    expect(readLogTable("load\n3\n")).toEqual({ ok: false, fault: { kind: "oneColumn" } });
    expect(readLogTable(`a,b\n${"1,2\n".repeat(20_001)}`)).toMatchObject({
      ok: false,
      fault: { kind: "tooLong", of: "rows" },
    });
  });

  it("keeps its matching as a file, which is read strictly", () => {
    const match = suggestMatch(tableOf(OWN));
    expect(columnMatchSchema.parse(JSON.parse(JSON.stringify(match)))).toEqual(match);
    expect(columnMatchSchema.safeParse({ ...match, columns: { load: { column: "x" } } }).success).toBe(false);
  });
});

it("an empty template is a log but for its tests", () => {
  const template = logTemplate(["One line for each pull, please"]);
  const filled = `${template}2026-07-04,leash,rope,,new,dry,,,,,,,,broke,10.4,,kN,,,\n`;
  expect(readBreakLog(filled)).toMatchObject({ ok: true, tests: [{ part: "leash", result: { value: 10400 } }] });
});
