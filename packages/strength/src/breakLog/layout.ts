/** The layout of a break log: the delimiter of its cells, the spelling of its columns, and whether it writes 31.2 or 31,2. */
import { LOG_COLUMNS, type LogColumn, type LogFault } from "./logEntry.ts";
import { logFact } from "./logFacts.ts";

export interface Row {
  readonly cells: readonly string[];
  /** Line in the file at which the row begins. */
  readonly line: number;
}

export type Delimiter = "," | ";" | "\t";
export const DELIMITER_NAMES = { ",": "commas", ";": "semicolons", "\t": "tabs" } as const satisfies Record<
  Delimiter,
  string
>;

/** A column's name in the form of `LOG_COLUMNS`: case, spaces and hyphens do not count. */
export const columnName = (written: string): string =>
  written
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, "_");

const isColumn = (name: string): name is LogColumn => (LOG_COLUMNS as readonly string[]).includes(name);

/** The delimiter that gives the header the most known columns; a comma when none gives any. */
export function delimiterOf(csv: string): Delimiter {
  const header = csv.split(/\r\n|\n|\r/).find((line) => line.trim() !== "" && !line.startsWith("#")) ?? "";
  const known = (delimiter: Delimiter) =>
    header.split(delimiter).filter((cell) => isColumn(columnName(cell.replaceAll('"', "")))).length;
  const counts = ([",", ";", "\t"] as const).map((delimiter) => ({ delimiter, count: known(delimiter) }));
  return counts.reduce((best, one) => (one.count > best.count ? one : best)).delimiter;
}

/** Rows without the empty cells that spreadsheets leave behind the last column. */
export function withoutEmptyEnd(rows: readonly Row[]): Row[] {
  const header = rows[0]?.cells ?? [];
  const width = header.findLastIndex((cell) => cell.trim() !== "") + 1;
  return rows.map((row) => {
    if (row.cells.length <= width) return row;
    const beyond = row.cells.slice(width);
    return beyond.every((cell) => cell.trim() === "") ? { cells: row.cells.slice(0, width), line: row.line } : row;
  });
}

/** The known column that an unknown one may stand for, once its unit is taken off, such as "Result (kN)". */
export function meantColumn(written: string): LogColumn | undefined {
  const bare = columnName(written.replace(/[([].*$/, "")).replace(/_+$/, "");
  return isColumn(bare) ? bare : undefined;
}

const NUMBER_COLUMNS: readonly LogColumn[] = [
  "months_outside",
  "sun_months",
  "falls",
  "clamped_months",
  "sewn_months",
  "result",
  "result_to",
];
const WITH_COMMA = /^[+-]?\d+,\d+$/;

/**
 * Rows with decimal points in place of decimal commas. Decimal commas are read only where commas do not part cells. A file that
 * writes both is at fault: its 1.234 may be a thousand.
 */
export function withDecimalPoints(
  rows: readonly Row[],
  columns: readonly string[],
  delimiter: Delimiter,
): { readonly rows: readonly Row[]; readonly faults: readonly LogFault[] } {
  if (delimiter === ",") return { rows, faults: [] };
  const isNumber = columns.map((column) => (NUMBER_COLUMNS as readonly string[]).includes(column));
  const cells = rows
    .slice(1)
    .flatMap(({ cells: row, line }) =>
      row.flatMap((cell, i) => (isNumber[i] ? [{ line, column: columns[i]!, text: cell.trim() }] : [])),
    );
  const comma = cells.find(({ text }) => WITH_COMMA.test(text));
  const doubtful = thousands(cells, comma === undefined ? "." : ",");
  if (!comma) return { rows, faults: doubtful };
  const faults = cells
    .filter(({ text }) => text.includes("."))
    .map(({ line, column, text }): LogFault => {
      const expected = logFact("expected.decimalComma", { line: comma.line });
      return { line, column, got: `"${text}"`, expected, message: logFact("cell.mixedDecimals", { text }) };
    });
  const pointed = rows.map((row, r) =>
    r === 0
      ? row
      : {
          ...row,
          cells: row.cells.map((cell, i) =>
            isNumber[i] && WITH_COMMA.test(cell.trim()) ? cell.replace(",", ".") : cell,
          ),
        },
  );
  return { rows: pointed, faults: [...faults, ...doubtful] };
}

interface NumberCell {
  readonly line: number;
  readonly column: string;
  readonly text: string;
}

/**
 * Numbers with three digits behind their only mark, such as 31.200: they may be 31.2 or 31 200. They are faults unless another
 * number of the file shows that the mark does not part thousands.
 */
function thousands(cells: readonly NumberCell[], mark: "." | ","): LogFault[] {
  const parts = cells.map((cell) => ({ ...cell, digits: cell.text.replace(/^[+-]/, "").split(mark) }));
  const marked = parts.filter(({ digits }) => digits.length === 2 && digits.every((part) => /^\d*$/.test(part)));
  const grouped = ({ digits: [whole, rest] }: (typeof marked)[number]) =>
    rest!.length === 3 && whole!.length >= 1 && whole!.length <= 3 && whole !== "0";
  // One number that cannot be in thousands settles the question for the file.
  if (marked.some((cell) => !grouped(cell))) return [];
  return marked.map(({ line, column, text, digits: [whole, rest] }): LogFault => {
    const small = `${whole}${mark}${rest!.replace(/0+$/, "") || "0"}`;
    const large = `${whole}${rest}`;
    return {
      line,
      column,
      got: `"${text}"`,
      expected: logFact("expected.either", { small, large }),
      message: logFact("cell.thousands", { text, small, large }),
    };
  });
}

/** A cell without the mark that keeps a spreadsheet from computing it. */
export const withoutApostrophe = (cell: string): string =>
  cell.startsWith("'") ? cell.replace(/^'(?=[=+\-@\t\r])/, "") : cell;
