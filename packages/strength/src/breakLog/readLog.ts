/** Reads a break log: every fault with its line and column, and nothing imported when there is one. */
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
import { readTest } from "./readEntry.ts";

export type BreakLogReading =
  | { readonly ok: true; readonly tests: readonly BreakTest[] }
  | { readonly ok: false; readonly faults: readonly LogFault[] };

/**
 * Reads CSV with the columns of `LOG_COLUMNS`; `REQUIRED_COLUMNS` must be there, the others may be left out. Lines that
 * begin with # are remarks; one that begins "# Invented" marks all tests as made up. Results of one file are in one unit.
 * Cells are parted by commas, or as many spreadsheets do it by semicolons or tabs, and then decimal commas are taken too.
 */
export function readBreakLog(csv: string): BreakLogReading {
  if (csv.length > MOST_CHARACTERS) return { ok: false, faults: [tooLarge(csv.length)] };
  const text = csv.replace(/^\uFEFF/, "");
  const delimiter = delimiterOf(text);
  const { rows: written, faults } = split(text, delimiter);
  const header = written[0];
  if (header === undefined)
    return { ok: false, faults: [fileFault("an empty file", `a header: ${LOG_COLUMNS.join(", ")}`)] };
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
  if (rows.length === 1) faults.push(fileFault("a header without tests", "at least one test below the header"));
  if (faults.length > 0) return { ok: false, faults: capped(faults.sort((a, b) => a.line - b.line)) };
  return { ok: true, tests: saysInvented(text) ? tests.map((test) => ({ ...test, invented: true })) : tests };
}

/** Far more than all break tests of a lifetime: what is larger is another file [-]. */
const MOST_CHARACTERS = 8e6;
const MOST_ROWS = 20_000;
/** Faults that are told one by one; of more a reader has no use. */
const MOST_FAULTS = 50;

function tooLarge(characters: number): LogFault {
  const size = `${Math.round(characters / 1e5) / 10} MB`;
  const expected = `a break log of at most ${MOST_CHARACTERS / 1e6} MB`;
  return {
    line: 1,
    column: "",
    got: size,
    expected,
    message: `The file has ${size}; expected ${expected}. Is it another file?`,
  };
}

function tooLong(rows: readonly Row[]): LogFault {
  const expected = `at most ${MOST_ROWS} tests`;
  const got = `${rows.length - 1} tests`;
  const message = `The log has ${got}, ${expected} are read; split it by material.`;
  return { line: rows[MOST_ROWS + 1]!.line, column: "", got, expected, message };
}

function capped(faults: readonly LogFault[]): readonly LogFault[] {
  if (faults.length <= MOST_FAULTS) return faults;
  const told = faults.slice(0, MOST_FAULTS - 1);
  const rest = faults.length - told.length;
  const next = faults[told.length]!;
  const message = `There are ${rest} more faults from this line on; mend these first and read the log again.`;
  return [
    ...told,
    { line: next.line, column: "", got: `${rest} more faults`, expected: "a log without faults", message },
  ];
}

const repeatsHeader = (cells: readonly string[], columns: readonly string[]): boolean =>
  cells.length === columns.length && cells.every((cell, i) => columnName(cell) === columns[i]);

function repeatedHeader(line: number, first: number): LogFault {
  return {
    line,
    column: "",
    got: `the header of line ${first} once more`,
    expected: "a test",
    message: `This line repeats the header of line ${first}: were two logs put together? Delete the line if their tests belong together.`,
  };
}

/** A remark (a line that begins with #) that begins with "invented" marks every test of the file as made up. */
const saysInvented = (csv: string): boolean => /^#\s*invented\b/im.test(csv);

/** Papaparse reads the cells; lines are counted here, for quoted cells may hold line breaks. */
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
      got: "a quotation mark without its pair",
      expected: `cells parted by ${DELIMITER_NAMES[delimiter]}s, quotation marks in pairs`,
      message: `${error.message}. Put a quotation mark at either end of the cell, or none.`,
    }),
  );
  return { rows: withoutEmptyEnd(rows), faults };
}

function headerFaults(header: readonly string[], line: number): LogFault[] {
  const names = header.map(columnName);
  const at = (column: string, got: string, expected: string, message: string): LogFault => ({
    line,
    column,
    got,
    expected,
    message,
  });
  const known = LOG_COLUMNS.join(", ");
  return [
    ...REQUIRED_COLUMNS.filter((column) => !names.includes(column)).map((column) =>
      at(column, "no such column", `a column named ${column}`, `The column ${column} is missing.`),
    ),
    ...header
      .filter((name) => !(LOG_COLUMNS as readonly string[]).includes(columnName(name)))
      .map((name) => {
        const meant = meantColumn(name);
        const hint = meant ? ` Did you mean ${meant}? Units go into the column unit.` : "";
        return at(
          name.trim(),
          `"${name.trim()}"`,
          `one of ${known}`,
          `The column "${name.trim()}" is not known.${hint}`,
        );
      }),
    ...names
      .filter((name, i) => names.indexOf(name) !== i)
      .map((name) => at(name, `"${name}" twice`, "every column once", `The column "${name}" appears twice.`)),
  ];
}

function widthFault(line: number, got: number, wanted: number, delimiter: Delimiter): LogFault {
  return {
    line,
    column: "",
    got: `${got} cells`,
    expected: `${wanted} cells, as in the header`,
    message: `This line has ${got} cells, the header has ${wanted}; is a ${DELIMITER_NAMES[delimiter]} missing or one too many?`,
  };
}

function fileFault(got: string, expected: string): LogFault {
  return { line: 1, column: "", got, expected, message: `The log needs ${expected}; it is ${got}.` };
}

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
      expected: `"${first}", as on line ${lines[0]!.line}`,
      message: `Units are mixed: this line is in ${cells[at]!.trim()}, line ${lines[0]!.line} in ${first}. Convert one of them.`,
    }));
}
