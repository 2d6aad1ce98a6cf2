/** Plain tables for a terminal of 80 to 100 columns. */

export interface Column {
  readonly head: string;
  readonly align?: "left" | "right";
  /** Takes up what is left of the width; its text is shortened when that is not enough. */
  readonly flexible?: boolean;
}
/** A cell: its text, and how to paint it once its width is known. */
export type Cell = string | { readonly text: string; readonly paint: (text: string) => string };

const GAP = 2;
const textOf = (cell: Cell) => (typeof cell === "string" ? cell : cell.text);
const LEAST_FLEXIBLE = 12;

/** Lays out rows under their heads, at most `width` columns wide where the flexible column allows it. */
export function table(columns: readonly Column[], rows: readonly (readonly Cell[])[], width: number): string {
  const widths = columns.map((column, c) => Math.max(column.head.length, ...rows.map((row) => textOf(row[c]!).length)));
  const over = widths.reduce((sum, w) => sum + w, GAP * (columns.length - 1)) - width;
  const flexible = columns.findIndex((column) => column.flexible);
  if (flexible >= 0 && over > 0) widths[flexible] = Math.max(LEAST_FLEXIBLE, widths[flexible]! - over);
  const line = (cells: readonly Cell[]) =>
    cells
      .map((cell, c) => {
        const text = fit(textOf(cell), widths[c]!, columns[c]!.align ?? "left");
        return typeof cell === "string" ? text : cell.paint(text);
      })
      .join(" ".repeat(GAP))
      .trimEnd();
  const rule = widths.map((w) => "─".repeat(w)).join("─".repeat(GAP));
  return [line(columns.map((column) => column.head)), rule, ...rows.map(line)].join("\n");
}

function fit(text: string, width: number, align: "left" | "right"): string {
  const short = text.length > width ? `${text.slice(0, width - 1)}…` : text;
  return align === "right" ? short.padStart(width) : short.padEnd(width);
}
