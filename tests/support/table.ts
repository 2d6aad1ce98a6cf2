/** Tables of published values, kept as CSV beside the tests that use them. */
import { readFileSync } from "node:fs";

/** Rows of a table of numbers in `published/data`, by the column names of its first line; a column's unit is in its name. */
export function publishedTable(name: string): readonly Readonly<Record<string, number>>[] {
  const text = readFileSync(new URL(`../published/data/${name}`, import.meta.url), "utf8");
  const [head, ...rows] = text.trim().split(/\r?\n/);
  const columns = head!.split(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/).map((column) => column.replaceAll('"', ""));
  return rows.map((row) => Object.fromEntries(row.split(",").map((value, k) => [columns[k]!, Number(value)])));
}
