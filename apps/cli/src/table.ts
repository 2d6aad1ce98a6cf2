/** Plain tables for a terminal of 80 to 100 columns. */
import { wrap } from "./wrap.ts";

export interface TableColumn {
  readonly head: string;
  readonly align?: "left" | "right";
  /** This column takes the rest of the width; longer text goes on in the next line. */
  readonly flexible?: boolean;
}
/** A cell: its text, and how to paint it once its width is known. */
export type Cell = string | { readonly text: string; readonly paint: (text: string) => string };

/** Blank letters between two columns [letters]. */
const COLUMN_GAP = 2;
const LEAST_FLEXIBLE_COLUMNS = 12;
const textOf = (cell: Cell) => (typeof cell === "string" ? cell : cell.text);
const paintOf = (cell: Cell) => (typeof cell === "string" ? (text: string) => text : cell.paint);

/** Lays out rows under their heads, at most `width` columns wide where the flexible column allows it. */
export function table(columns: readonly TableColumn[], rows: readonly (readonly Cell[])[], width: number): string {
  const widths = columns.map((column, c) => Math.max(column.head.length, ...rows.map((row) => textOf(row[c]!).length)));
  const over = widths.reduce((sum, w) => sum + w, COLUMN_GAP * (columns.length - 1)) - width;
  const flexible = columns.findIndex((column) => column.flexible);
  if (flexible >= 0 && over > 0) widths[flexible] = Math.max(LEAST_FLEXIBLE_COLUMNS, widths[flexible]! - over);
  const rule = widths.map((w) => "─".repeat(w)).join("─".repeat(COLUMN_GAP));
  const lines = (cells: readonly Cell[]) => rowLines(cells, columns, widths);
  return [...lines(columns.map((column) => column.head)), rule, ...rows.flatMap(lines)].join("\n");
}

/** A row of cells as one line, or as several where a cell is longer than its column. */
function rowLines(cells: readonly Cell[], columns: readonly TableColumn[], widths: readonly number[]): string[] {
  const pieces = cells.map((cell, c) =>
    textOf(cell).length > widths[c]! ? wrap(textOf(cell), widths[c]!).split("\n") : [textOf(cell)],
  );
  const height = Math.max(...pieces.map((piece) => piece.length));
  return Array.from({ length: height }, (_, i) =>
    cells
      .map((cell, c) => {
        const piece = pieces[c]![i];
        const text = fitted(piece ?? "", widths[c]!, columns[c]!.align ?? "left");
        return piece === undefined ? text : paintOf(cell)(text);
      })
      .join(" ".repeat(COLUMN_GAP))
      .trimEnd(),
  );
}

/** Pads; a single word longer than its column is shortened. */
function fitted(text: string, width: number, align: "left" | "right"): string {
  const short = text.length > width ? `${text.slice(0, width - 1)}…` : text;
  return align === "right" ? short.padStart(width) : short.padEnd(width);
}
