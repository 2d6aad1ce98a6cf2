/** A table of break tests from any spreadsheet, before anybody has said which column is which. */
import Papa from "papaparse";
import { delimiterOf } from "../tables/delimiter.ts";

export interface LogRow {
  readonly cells: readonly string[];
  /** Line in the file at which it begins, from 1. */
  readonly line: number;
}

export interface LogTable {
  /** Names of the first line, each once; those without one are named by their letter. */
  readonly columns: readonly string[];
  readonly rows: readonly LogRow[];
  /** Lines that begin with #, and titles above the table. */
  readonly remarks: readonly string[];
}

export type LogTableFault =
  | { readonly kind: "empty" | "oneColumn" }
  | { readonly kind: "tooLong"; readonly most: number; readonly of: "characters" | "rows" };

export type LogTableReading =
  | { readonly ok: true; readonly table: LogTable }
  | { readonly ok: false; readonly fault: LogTableFault };

const MOST_CHARACTERS = 5_000_000;
const MOST_ROWS = 20_000;

/** Comma, semicolon or tab between; the first line with at least two words in it has the names. */
export function readLogTable(text: string): LogTableReading {
  const no = (fault: LogTableFault): LogTableReading => ({ ok: false, fault });
  if (text.length > MOST_CHARACTERS) return no({ kind: "tooLong", most: MOST_CHARACTERS, of: "characters" });
  const { rows, remarks } = split(text.replace(/^\uFEFF/, ""));
  const headAt = rows.findIndex(({ cells }) => cells.filter((cell) => cell !== "").length > 1);
  if (headAt < 0 && rows.length > 1) return no({ kind: "oneColumn" });
  const [head, ...body] = rows.slice(Math.max(headAt, 0));
  const titles = rows.slice(0, Math.max(headAt, 0)).map(({ cells }) => cells.join(""));
  if (!head || body.length === 0) return no({ kind: "empty" });
  if (body.length > MOST_ROWS) return no({ kind: "tooLong", most: MOST_ROWS, of: "rows" });
  const width = Math.max(...[head, ...body].map(({ cells }) => cells.findLastIndex((cell) => cell !== "") + 1));
  const columns = namesOf(head.cells, width);
  return {
    ok: true,
    table: {
      columns,
      remarks: [...remarks, ...titles],
      rows: body.map(({ cells, line }) => ({ line, cells: columns.map((_, i) => cells[i] ?? "") })),
    },
  };
}

function split(text: string): { readonly rows: readonly LogRow[]; readonly remarks: readonly string[] } {
  const { data } = Papa.parse<string[]>(text, {
    skipEmptyLines: false,
    delimiter: delimiterOf(text),
    comments: false,
  });
  const rows: LogRow[] = [];
  const remarks: string[] = [];
  let line = 1;
  for (const written of data) {
    const cells = written.map((cell) => cell.trim());
    if (cells[0]?.startsWith("#")) remarks.push(cells.filter((cell) => cell !== "").join(", "));
    else if (cells.some((cell) => cell !== "")) rows.push({ cells, line });
    line += 1 + written.reduce((breaks, cell) => breaks + (cell.match(/\r\n|\n|\r/g)?.length ?? 0), 0);
  }
  return { rows, remarks };
}

/** Column names as written. A column without a name gets its letter; so does the second column of a name. */
function namesOf(cells: readonly string[], width: number): readonly string[] {
  const seen = new Set<string>();
  return Array.from({ length: width }, (_, i) => {
    const written = cells[i] ?? "";
    const name = written === "" ? letterOf(i) : seen.has(written) ? `${written} (${letterOf(i)})` : written;
    seen.add(name);
    return name;
  });
}

/** A column's letter, as spreadsheets name columns: A to Z, then AA. */
function letterOf(index: number): string {
  const here = String.fromCharCode(65 + (index % 26));
  return index < 26 ? here : letterOf(Math.floor(index / 26) - 1) + here;
}
