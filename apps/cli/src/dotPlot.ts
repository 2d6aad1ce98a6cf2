/** Dots on lines, so that the eye judges before any number does. */
import type { BreakTest } from "@secondline/strength";
import { quantity } from "@secondline/words";
import { sayStrength } from "@secondline/words/terminal/strength";

const TEST_DOT = "•";
const BAND_LINE = "─";
const MOST_DOTS_TOLD_APART = 9;

export interface TextPlotRow {
  readonly label: string;
  /** Several dots in one place are shown by their number. */
  readonly dots: readonly number[];
  /** Behind the dots. */
  readonly band?: readonly [from: number, to: number];
}

export interface TextPlot {
  readonly rows: readonly TextPlotRow[];
  /** Ends of the line, and the words under them. */
  readonly from: number;
  readonly to: number;
  readonly scale: readonly [left: string, right: string];
  /** Lines across all rows. */
  readonly limits?: readonly number[];
  readonly labelWidth: number;
  /** Width to fill. */
  readonly columns: number;
}

export function linePlot({ rows, from, to, scale, limits = [], labelWidth, columns }: TextPlot): string {
  const inner = columns - labelWidth - 2;
  const column = (value: number) => Math.round(((value - from) / (to - from)) * (inner - 1));
  const within = (place: number) => place >= 0 && place < inner;
  const lines = rows.map(({ label, dots, band }) => {
    const cells = new Array<string>(inner).fill(" ");
    if (band)
      for (let c = Math.max(0, column(band[0])); c <= Math.min(inner - 1, column(band[1])); c++) cells[c] = BAND_LINE;
    for (const place of limits.map(column).filter(within)) cells[place] = "│";
    const counts = new Map<number, number>();
    for (const place of dots.map(column).filter(within)) counts.set(place, (counts.get(place) ?? 0) + 1);
    for (const [place, count] of counts)
      cells[place] = count === 1 ? TEST_DOT : String(Math.min(MOST_DOTS_TOLD_APART, count));
    return `${label.padEnd(labelWidth)}${cells.join("")}`.trimEnd();
  });
  const [left, right] = scale;
  const blank = " ".repeat(labelWidth);
  const ends = `${blank}${left}${" ".repeat(Math.max(1, inner - left.length - right.length))}${right}`;
  return [...lines, `${blank}${BAND_LINE.repeat(inner)}`, ends].join("\n");
}

/** Least width of the labels at the left [letters]. */
const LEAST_LABEL_COLUMNS = 10;

/** Break tests: one row per kind of result, every test a mark. `columns`: width to fill. */
export function dotPlot(tests: readonly BreakTest[], columns: number): string {
  const marks = tests.flatMap(({ result }) => {
    if (result.kind === "exact") return [{ row: sayStrength("dots.broke"), at: result.value }];
    if (result.kind === "above") return [{ row: sayStrength("dots.held"), at: result.value }];
    if (result.kind === "below") return [{ row: sayStrength("dots.brokeBelow"), at: result.value }];
    return [
      { row: sayStrength("dots.brokeBetween"), at: result.from },
      { row: sayStrength("dots.brokeBetween"), at: result.to },
    ];
  });
  const values = marks.map((mark) => mark.at);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const margin = Math.max(0.08 * (most - least), 0.02 * most);
  const [from, to] = [Math.max(0, least - margin), most + margin];
  const rows = [...new Set(marks.map((mark) => mark.row))].map((label) => ({
    label,
    dots: marks.flatMap(({ row, at }) => (row === label ? [at] : [])),
  }));
  const scale = [quantity.kilonewtons(from, "nearest"), `${quantity.kilonewtons(to, "nearest")} kN`] as const;
  const labelWidth = Math.max(LEAST_LABEL_COLUMNS, ...rows.map(({ label }) => label.length + 1));
  return linePlot({ rows, from, to, scale, labelWidth, columns });
}
