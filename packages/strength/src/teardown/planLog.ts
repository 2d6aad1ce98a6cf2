/** The plan as a break log to fill in at the machine, and the log that comes back. */
import Papa from "papaparse";
import { columnName, delimiterOf } from "../breakLog/layout.ts";
import { LOG_COLUMNS, type LogColumn } from "../breakLog/logEntry.ts";
import { type BreakLogReading, readBreakLog } from "../breakLog/readLog.ts";
import type { Piece, Teardown } from "./teardown.ts";

/** A piece's row: everything that is known before it is pulled. */
export function pieceRow({ id, row }: Piece, on: string): Record<LogColumn, string> {
  const known: Partial<Record<LogColumn, string>> = { date: on, ...row, note: `piece ${id}` };
  return Object.fromEntries(LOG_COLUMNS.map((column) => [column, known[column] ?? ""])) as Record<LogColumn, string>;
}

/**
 * CSV in the columns of a break log, outcome and result empty. A cell that a spreadsheet would compute begins with an
 * apostrophe, which reading takes off again.
 */
export function teardownLog({ pieces, on, invented }: Pick<Teardown, "pieces" | "on" | "invented">): string {
  const data = pieces.map((piece) => {
    const row = pieceRow(piece, on);
    return LOG_COLUMNS.map((column) => row[column]);
  });
  const mark = invented ? "# Invented: nothing in it was ever pulled.\n" : "";
  return `${mark}${Papa.unparse({ fields: [...LOG_COLUMNS], data }, { newline: "\n", escapeFormulae: true })}\n`;
}

export type ResultsReading =
  | (Extract<BreakLogReading, { ok: true }> & {
      /** Rows that nobody has filled in yet. */
      readonly empty: number;
    })
  | Extract<BreakLogReading, { ok: false }>;

/** Rows with neither outcome nor result are pieces that were not pulled: they are counted and left out. */
export function readResults(csv: string): ResultsReading {
  const text = csv.replace(/^\uFEFF/, "");
  const delimiter = delimiterOf(text);
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false });
  const header = data.findIndex((cells) => !cells[0]!.startsWith("#") && cells.some((cell) => cell.trim() !== ""));
  const columns = (data[header] ?? []).map(columnName);
  const asked = ["outcome", "result"].map((name) => columns.indexOf(name));
  if (asked.includes(-1) || errors.length > 0) return withCount(readBreakLog(csv), 0);
  let empty = 0;
  const lines = data.map((cells, i) => {
    const isTest = i > header && !cells[0]!.startsWith("#") && cells.some((cell) => cell.trim() !== "");
    if (!isTest || asked.some((column) => (cells[column] ?? "").trim() !== "")) {
      return Papa.unparse([cells], { delimiter });
    }
    empty++;
    // A remark of as many lines in place of the row, so that faults of other rows keep their line numbers.
    return `#${"\n#".repeat(cells.reduce((sum, cell) => sum + (cell.match(/\r\n|\n|\r/g)?.length ?? 0), 0))}`;
  });
  return withCount(readBreakLog(lines.join("\n")), empty);
}

function withCount(reading: BreakLogReading, empty: number): ResultsReading {
  return reading.ok ? { ...reading, empty } : reading;
}
