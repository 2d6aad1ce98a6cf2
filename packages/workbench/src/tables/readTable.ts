/**
 * A table of two columns of numbers from any spreadsheet: comma, semicolon or tab between, decimals with a point or, beside
 * semicolons and tabs, with a comma; a first line of names with units, or none.
 */
import Papa from "papaparse";
import { delimiterOf } from "./delimiter.ts";

export interface FileColumn {
  /** The name as written in the first line; empty if the column has no name. */
  readonly name: string;
  /** What stands in brackets or after a line in the name: "force [kN]", "force_kN", "distance (ft)". */
  readonly unit: string;
}

export type TableFault =
  | { readonly kind: "empty" }
  | { readonly kind: "tooLong"; readonly most: number; readonly of: "characters" | "rows" }
  | { readonly kind: "columns"; readonly row: number; readonly count: number }
  | { readonly kind: "number"; readonly row: number; readonly got: string };

export type TableReading =
  | {
      readonly ok: true;
      /** Undefined: the file has no line of names. */
      readonly columns: readonly FileColumn[] | undefined;
      readonly rows: readonly (readonly number[])[];
      /** Line in the file that each row is from, from 1. */
      readonly lines: readonly number[];
    }
  | { readonly ok: false; readonly faults: readonly TableFault[] };

/** Characters of a file, and rows in it, that are read. */
export const MOST_TEXT = 5_000_000;
const MOST_ROWS = 100_000;
const MOST_FAULTS = 10;

/** Where the columns are that a reader needs, from 0: the first two unless it says otherwise. */
type ColumnsNeeded = (columns: readonly FileColumn[]) => readonly number[] | undefined;
const FIRST_TWO = [0, 1];

/** Reads a table with at least two columns. The needed ones must be numbers; the others are read too where they are. */
export function readTable(text: string, columnsNeeded: ColumnsNeeded = () => undefined): TableReading {
  if (text.length > MOST_TEXT) return { ok: false, faults: [{ kind: "tooLong", most: MOST_TEXT, of: "characters" }] };
  const written = text.replace(/^\uFEFF/, "");
  const parsed = Papa.parse<string[]>(written, { skipEmptyLines: false, delimiter: delimiterOf(written) });
  const lines = linesOf(parsed.data);
  const comma = parsed.meta.delimiter !== ",";
  const [first] = lines;
  if (!first) return { ok: false, faults: [{ kind: "empty" }] };
  const named = first.cells.some((cell) => cell !== "" && numberOf(cell, comma) === undefined);
  const body = named ? lines.slice(1) : lines;
  if (body.length === 0) return { ok: false, faults: [{ kind: "empty" }] };
  if (body.length > MOST_ROWS) return { ok: false, faults: [{ kind: "tooLong", most: MOST_ROWS, of: "rows" }] };
  const width = named ? first.cells.length : body[0]!.cells.length;
  const columns = named ? first.cells.map(columnOf) : undefined;
  const needed = (columns && columnsNeeded(columns)) ?? FIRST_TWO;
  const faults = body.flatMap(({ line, cells }) => rowFaults(line, cells, needed, comma)).slice(0, MOST_FAULTS);
  if (width < 2) faults.unshift({ kind: "columns", row: first.line, count: width });
  if (faults.length > 0) return { ok: false, faults };
  return {
    ok: true,
    columns,
    rows: body.map(({ cells }) => cells.map((cell) => numberOf(cell, comma) ?? Number.NaN)),
    lines: body.map(({ line }) => line),
  };
}

interface Line {
  readonly line: number;
  readonly cells: readonly string[];
}

/** Without empty lines, titles above the table, and the empty columns that a spreadsheet may write after the last. */
function linesOf(table: readonly (readonly string[])[]): readonly Line[] {
  const lines = table
    .map((cells, i) => ({ line: i + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ""));
  const tableAt = lines.findIndex(({ cells }) => cells.filter((cell) => cell !== "").length > 1);
  const width = lines.reduce((most, { cells }) => Math.max(most, cells.findLastIndex((cell) => cell !== "") + 1), 0);
  return lines.slice(Math.max(tableAt, 0)).map(({ line, cells }) => ({ line, cells: cells.slice(0, width) }));
}

function rowFaults(row: number, cells: readonly string[], needed: readonly number[], comma: boolean): TableFault[] {
  if (cells.length < 2) return [{ kind: "columns", row, count: cells.length }];
  const bad = needed.map((at) => cells[at] ?? "").find((cell) => numberOf(cell, comma) === undefined);
  return bad === undefined ? [] : [{ kind: "number", row, got: bad }];
}

const NUMBER_PATTERN = /^[-+\u2212]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/;

function numberOf(cell: string, comma: boolean): number | undefined {
  const text = comma ? cell.replace(",", ".") : cell;
  if (!NUMBER_PATTERN.test(text)) return undefined;
  const number = Number(text.replace("\u2212", "-"));
  return Number.isFinite(number) ? number : undefined;
}

/** "Force [kN]", "force (kN)", "force_kN", "force, kN", "kN". */
function columnOf(name: string): FileColumn {
  const unit =
    /[[(]\s*([^\])]*?)\s*[\])]\s*$/.exec(name)?.[1] ?? /(?:^|[_,\s])\s*([A-Za-z%]{1,4})$/.exec(name)?.[1] ?? "";
  return { name, unit };
}
