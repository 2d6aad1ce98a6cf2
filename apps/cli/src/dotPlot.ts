/** Break tests as dots on a line, so that the eye judges before any number does. */
import type { BreakTest } from "@secondline/strength";
import { quantity } from "@secondline/words";

const LABEL = 10;

/** One row per kind of result; every test a mark, two in one place a digit. `columns`: width to fill. */
export function dotPlot(tests: readonly BreakTest[], columns: number): string {
  const marks = tests.flatMap(({ result }) => {
    if (result.kind === "exact") return [{ row: "broke", at: result.value }];
    if (result.kind === "above") return [{ row: "held  →", at: result.value }];
    if (result.kind === "below") return [{ row: "broke ←", at: result.value }];
    return [
      { row: "broke ↔", at: result.from },
      { row: "broke ↔", at: result.to },
    ];
  });
  const values = marks.map((mark) => mark.at);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const margin = Math.max(0.08 * (most - least), 0.02 * most);
  const [from, to] = [Math.max(0, least - margin), most + margin];
  const inner = columns - LABEL - 2;
  const column = (value: number) => Math.round(((value - from) / (to - from)) * (inner - 1));
  const rows = [...new Set(marks.map((mark) => mark.row))].map((row) => {
    const counts = new Array<number>(inner).fill(0);
    for (const mark of marks) if (mark.row === row) counts[column(mark.at)]!++;
    return `${row.padEnd(LABEL)}${counts.map((n) => (n === 0 ? " " : n === 1 ? "•" : String(Math.min(9, n)))).join("")}`;
  });
  const [left, right] = [quantity.kilonewtons(from, "nearest"), `${quantity.kilonewtons(to, "nearest")} kN`];
  const axis = `${" ".repeat(LABEL)}${"─".repeat(inner)}`;
  const scale = `${" ".repeat(LABEL)}${left}${" ".repeat(Math.max(1, inner - left.length - right.length))}${right}`;
  return [...rows.map((row) => row.trimEnd()), axis, scale].join("\n");
}
