/** Reads a break log. It reports every fault with its line and column, and imports nothing if there is a fault. */
import { type FactValue, rigFact } from "@secondline/rig";
import Papa from "papaparse";
import {
  columnName,
  DELIMITER_NAMES,
  type Delimiter,
  delimiterOf,
  meantColumn,
  type Row,
  withDecimalPoints,
  withoutApostrophe,
  withoutEmptyEnd,
} from "./layout.ts";
import { type BreakTest, LOG_COLUMNS, type LogColumn, type LogFault, REQUIRED_COLUMNS } from "./logEntry.ts";
import { type LogFact, logFact } from "./logFacts.ts";
import { readTest } from "./readEntry.ts";

export type BreakLogReading =
  | { readonly ok: true; readonly tests: readonly BreakTest[] }
  | {
      readonly ok: false;
      readonly faults: readonly LogFault[];
      /** Tests of the lines without a fault, to be shown; a log with a fault is not imported, not even in part. */
      readonly readable?: readonly BreakTest[];
    };

/**
 * Reads CSV with the columns of `LOG_COLUMNS`; `REQUIRED_COLUMNS` must be there, the others may be left out. Lines that begin
 * with # are remarks; one that begins "# Invented" marks all tests as made up. Results of one file are in one unit. Commas part
 * the cells, or semicolons or tabs, as in many spreadsheets; then decimal commas are read too.
 */
export function readBreakLog(csv: string): BreakLogReading {
  if (csv.length > MOST_CHARACTERS) return { ok: false, faults: [tooLarge(csv.length)] };
  const text = csv.replace(/^\uFEFF/, "");
  const delimiter = delimiterOf(text);
  const { rows: written, faults } = split(text, delimiter);
  const header = written[0];
  if (header === undefined) return { ok: false, faults: [emptyFault()] };
  faults.push(...headerFaults(header.cells, header.line));
  if (faults.length > 0) return { ok: false, faults: capped(faults) };
  if (written.length - 1 > MOST_ROWS) return { ok: false, faults: [tooLong(written)] };
  const columns = header.cells.map(columnName) as LogColumn[];
  const decimals = withDecimalPoints(written, columns, delimiter);
  const { rows } = decimals;
  faults.push(...decimals.faults);
  const tests: BreakTest[] = [];
  for (const { cells, line } of rows.slice(1)) {
    if (repeatsHeader(cells, columns)) {
      faults.push(repeatedHeader(line, header.line));
      continue;
    }
    if (cells.length !== columns.length) {
      faults.push(widthFault(line, cells.length, columns.length, delimiter));
      continue;
    }
    const fields: Partial<Record<LogColumn, string>> = {};
    for (let i = 0; i < columns.length; i++) fields[columns[i]!] = withoutApostrophe(cells[i]!).trim();
    const test = readTest(fields, line);
    if (test.ok) tests.push(test.value);
    else faults.push(...test.faults);
  }
  const unreadable = new Set(faults.filter(({ column }) => column === "unit").map(({ line }) => line));
  faults.push(...unitFaults(rows, columns).filter(({ line }) => !unreadable.has(line)));
  if (rows.length === 1) faults.push(fileFault(logFact("got.headerOnly", {}), logFact("expected.tests", {})));
  const told: readonly BreakTest[] = saysInvented(text) ? tests.map((test) => ({ ...test, invented: true })) : tests;
  if (faults.length === 0) return { ok: true, tests: told };
  const bad = new Set(faults.map(({ line }) => line));
  const readable = told.filter(({ line }) => !bad.has(line!));
  return { ok: false, faults: capped(faults.sort((a, b) => a.line - b.line)), readable };
}

/** Far more characters than all break tests of a lifetime need: a larger file is not a break log [-]. */
const MOST_CHARACTERS = 8e6;
const MOST_ROWS = 20_000;
/** Number of faults that are told one by one; more are of no use to a reader [-]. */
const MOST_FAULTS = 50;

function tooLarge(characters: number): LogFault {
  const size = logFact("got.megabytes", { size: Math.round(characters / 1e5) / 10 });
  const expected = logFact("expected.logSize", { most: MOST_CHARACTERS / 1e6 });
  return { line: 1, column: "", got: size, expected, message: logFact("log.tooLarge", { size, expected }) };
}

function tooLong(rows: readonly Row[]): LogFault {
  const expected = logFact("expected.atMostTests", { count: MOST_ROWS });
  const got = logFact("got.tests", { count: rows.length - 1 });
  const message = logFact("log.tooLong", { got, expected });
  return { line: rows[MOST_ROWS + 1]!.line, column: "", got, expected, message };
}

function capped(faults: readonly LogFault[]): readonly LogFault[] {
  if (faults.length <= MOST_FAULTS) return faults;
  const told = faults.slice(0, MOST_FAULTS - 1);
  const rest = faults.length - told.length;
  const next = faults[told.length]!;
  const got = logFact("got.moreFaults", { count: rest });
  const message = logFact("log.moreFaults", { count: rest });
  return [...told, { line: next.line, column: "", got, expected: logFact("expected.faultless", {}), message }];
}

const repeatsHeader = (cells: readonly string[], columns: readonly string[]): boolean =>
  cells.length === columns.length && cells.every((cell, i) => columnName(cell) === columns[i]);

function repeatedHeader(line: number, first: number): LogFault {
  return {
    line,
    column: "",
    got: logFact("got.headerAgain", { first }),
    expected: logFact("expected.test", {}),
    message: logFact("log.headerAgain", { first }),
  };
}

/** A remark (a line that begins with #) that begins with "invented" marks every test of the file as made up. */
const saysInvented = (csv: string): boolean => /^#\s*invented\b/im.test(csv);

/** Papaparse reads the cells. This function counts the lines, because quoted cells may hold line breaks. */
function split(csv: string, delimiter: Delimiter): { rows: Row[]; faults: LogFault[] } {
  const { data, errors } = Papa.parse<string[]>(csv, { delimiter, skipEmptyLines: false });
  let line = 1;
  const starts: number[] = [];
  const rows: Row[] = [];
  for (const cells of data) {
    starts.push(line);
    const remark = cells[0]!.startsWith("#");
    if (!remark && cells.some((cell) => cell.trim() !== "")) rows.push({ cells, line });
    line += 1 + cells.reduce((breaks, cell) => breaks + (cell.match(/\r\n|\n|\r/g)?.length ?? 0), 0);
  }
  const faults = errors.map(
    (error): LogFault => ({
      line: starts[error.row ?? 0] ?? 1,
      column: "",
      got: logFact("got.quote", {}),
      expected: logFact(`expected.${DELIMITER_NAMES[delimiter]}`, {}),
      message: logFact(error.code === "MissingQuotes" ? "log.quoteOpen" : "log.quoteWithin", {}),
    }),
  );
  return { rows: withoutEmptyEnd(rows), faults };
}

function headerFaults(header: readonly string[], line: number): LogFault[] {
  const names = header.map(columnName);
  const at = (column: string, got: FactValue, expected: FactValue, message: LogFact): LogFault => ({
    line,
    column,
    got,
    expected,
    message,
  });
  const known = rigFact("expected.oneOf", { list: { list: LOG_COLUMNS } });
  return [
    ...REQUIRED_COLUMNS.filter((column) => !names.includes(column)).map((column) =>
      at(
        column,
        logFact("got.noColumn", {}),
        logFact("expected.column", { column }),
        logFact("log.columnMissing", { column }),
      ),
    ),
    ...header
      .filter((name) => !(LOG_COLUMNS as readonly string[]).includes(columnName(name)))
      .map((name) => {
        const meant = meantColumn(name);
        const column = name.trim();
        const hint = meant ? logFact("log.meant", { column: meant }) : undefined;
        return at(column, `"${column}"`, known, logFact("log.columnUnknown", { column }, hint));
      }),
    ...names
      .filter((name, i) => names.indexOf(name) !== i)
      .map((column) =>
        at(
          column,
          logFact("got.columnTwice", { column }),
          logFact("expected.columnOnce", {}),
          logFact("log.columnTwice", { column }),
        ),
      ),
  ];
}

function widthFault(line: number, got: number, wanted: number, delimiter: Delimiter): LogFault {
  return {
    line,
    column: "",
    got: logFact("got.cells", { count: got }),
    expected: logFact("expected.cells", { count: wanted }),
    message: logFact(`log.${DELIMITER_NAMES[delimiter]}`, { got, wanted }),
  };
}

function fileFault(got: LogFact, expected: LogFact): LogFault {
  return { line: 1, column: "", got, expected, message: logFact("log.needs", { got, expected }) };
}

const emptyFault = (): LogFault =>
  fileFault(logFact("got.emptyLog", {}), logFact("expected.header", { list: { list: LOG_COLUMNS } }));

/** Every line whose unit differs from the first one's. */
function unitFaults(rows: readonly Row[], columns: readonly LogColumn[]): LogFault[] {
  const at = columns.indexOf("unit");
  const lines = rows
    .slice(1)
    .filter(
      (row) =>
        row.cells.length === columns.length && row.cells[at]!.trim() !== "" && !repeatsHeader(row.cells, columns),
    );
  const first = lines[0]?.cells[at]?.trim();
  return lines
    .filter((row) => row.cells[at]!.trim() !== first)
    .map(({ cells, line }) => ({
      line,
      column: "unit",
      got: `"${cells[at]!.trim()}"`,
      expected: logFact("expected.unit", { unit: first!, line: lines[0]!.line }),
      message: logFact("log.unitsMixed", { unit: cells[at]!.trim(), line: lines[0]!.line, first: first! }),
    }));
}
