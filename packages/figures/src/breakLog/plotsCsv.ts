/** The numbers of plots as one table: a row for each test, point of a curve and bound. */
import Papa from "papaparse";
import type { Plot } from "../plot/plot.ts";

const CSV_COLUMNS = [
  "figure",
  "of",
  "series",
  "state",
  "dose",
  "dose_unit",
  "outcome",
  "strength_kN",
  "low_kN",
  "high_kN",
  "share_below",
  "expected_kN",
  "over_expected",
  "low_over_expected",
  "high_over_expected",
  "batch",
  "date",
  "log_line",
] as const;

/** CSV; a cell that a spreadsheet would compute begins with an apostrophe. `remarks` stand above it, each in a line of its own. */
export function plotsCsv(plots: readonly Plot[], remarks: readonly string[]): string {
  const data = plots.flatMap(({ figure, of, rows }) =>
    rows.map((row) => {
      const whole: Readonly<Record<string, string | number | undefined>> = { figure, of, ...row };
      return CSV_COLUMNS.map((column) => whole[column] ?? "");
    }),
  );
  const head = remarks.map((remark) => `# ${remark.replace(/\s+/g, " ")}\n`).join("");
  return `${head}${Papa.unparse({ fields: [...CSV_COLUMNS], data }, { newline: "\n", escapeFormulae: true })}\n`;
}
