/** Reads the tests of a user's own table with the checks of a break log. Every fault names the line and the column of the table. */
import {
  type BreakLogReading,
  type BreakTest,
  LOG_COLUMNS,
  type LogColumn,
  type LogFault,
  readBreakLog,
} from "@secondline/strength";
import Papa from "papaparse";
import { isoDate } from "./dateOrder.ts";
import type { LogTable } from "./logTable.ts";
import { type ColumnMatch, meaning } from "./match.ts";

/** The first lines of the log: remarks and the names. */
const HEAD_LINE = 1;

export function readMatched(table: LogTable, match: ColumnMatch): BreakLogReading {
  const columns = LOG_COLUMNS.filter((column) => match.columns[column] !== undefined);
  const data = table.rows.map((row) => columns.map((column) => cellOf(table, match, column, row.cells)));
  const log = Papa.unparse({ fields: [...columns], data }, { newline: "\n", delimiter: ";", quotes: true });
  const marks = table.remarks.map((remark) => `#${remark.replace(/^#/, "")}\n`).join("");
  const reading = readBreakLog(marks + log);
  const lineOf = (line: number) => table.rows[line - HEAD_LINE - table.remarks.length - 1]?.line ?? line;
  const inTable = (test: BreakTest) => (test.line === undefined ? test : { ...test, line: lineOf(test.line) });
  if (reading.ok) return { ok: true, tests: reading.tests.map(inTable) };
  const { faults, readable = [] } = reading;
  return {
    ok: false,
    faults: faults.map((fault) => placed(fault, match, lineOf)),
    readable: readable.map(inTable),
  };
}

/** A cell in the words of a log; without the column, nothing. */
export function cellOf(table: LogTable, match: ColumnMatch, column: LogColumn, cells: readonly string[]): string {
  const from = match.columns[column];
  if (from === undefined) return "";
  const text = "same" in from ? from.same.trim() : (cells[table.columns.indexOf(from.column)] ?? "");
  // A line break inside a cell would move the lines below it.
  const written = (column === "date" ? isoDate(text, match.dates) : (meaning(match, column, text) ?? text)).replace(
    /\s+/g,
    " ",
  );
  return /^[=+\-@]/.test(written) && column === "note" ? `'${written}` : written;
}

/** The fault, with the line and the column of the user's own table. */
function placed(fault: LogFault, { columns }: ColumnMatch, lineOf: (line: number) => number): LogFault {
  const from = columns[fault.column as LogColumn];
  const column = from && "column" in from ? from.column : fault.column;
  return { ...fault, line: lineOf(fault.line), column };
}
