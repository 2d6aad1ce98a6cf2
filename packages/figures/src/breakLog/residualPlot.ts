/** Every test of a stock against the expected strength of its state: a row for each state. */
import type { StateResiduals, StockResiduals, TestResidual } from "@secondline/strength";
import { broughtIn, stockName } from "@secondline/words";
import type { BreakLogWords } from "@secondline/words/breakLog";
import type { Mark, Plot, PlotCurve, PlotPoint, PlotRow } from "../plot/plot.ts";
import { roundTicks } from "../roundTicks.ts";
import { digits, kN, testMark, testRow } from "./testMarks.ts";

/** Heights within a row, in rows: words above, then the tests in levels, so that none covers another [rows]. */
const WORDS_HEIGHT = 0.68;
const LEVEL_HEIGHT = 0.42;
const MOST_LEVELS = 9;
/** Two tests nearer to each other than this share of the axis are put on different levels [-]. */
const TOUCHING_SHARE = 0.022;
const ROW_HEIGHT = 30;

interface Row {
  readonly state: StateResiduals;
  readonly levels: readonly number[];
  readonly top: number;
  readonly bottom: number;
}

export function residualPlot({ stock, states }: StockResiduals, words: BreakLogWords): Plot {
  const { say } = words;
  const edge = edgeOf(states);
  const rows: Row[] = [];
  for (const state of states) {
    const top = rows.at(-1)?.bottom ?? 0;
    const levels = levelsOf(state.tests, 2 * edge * TOUCHING_SHARE);
    const bottom = top + WORDS_HEIGHT + LEVEL_HEIGHT * (Math.max(0, ...levels) + 1) + 0.28;
    rows.push({ state, levels, top, bottom });
  }
  const most = rows.at(-1)?.bottom ?? 1;
  return {
    figure: "residuals",
    of: stock.name,
    title: say("figure.residuals.title", { stock: stockName(stock.name) }),
    notes: [say("figure.residuals.notes")],
    x: {
      label: say("figure.residuals.x"),
      from: -edge,
      to: edge,
      ticks: roundTicks(-edge, edge, 8).map((at) => ({ at, text: signed(at) })),
    },
    y: { label: "", from: most, to: 0, ticks: [] },
    strength: "x",
    bands: rows.map(({ state, top, bottom }) => boxOf(state.band.map(percent), top + WORDS_HEIGHT, bottom)),
    curves: rows.flatMap(curvesOf),
    marks: rows.flatMap(marksOf),
    rules: [],
    texts: rows.map(({ state, top }) => ({
      at: [-edge, top + WORDS_HEIGHT - 0.12],
      text: say("figure.residuals.state", { state: broughtIn(state.state), count: state.tests.length }),
    })),
    height: Math.max(90, most * ROW_HEIGHT),
    rows: states.flatMap(rowsOf),
  };
}

const percent = (over: number): number => 100 * (over - 1);
const signed = (at: number): string => (at === 0 ? "0" : at > 0 ? `+${at}` : `−${-at}`);

/** Half of the axis [%]. */
function edgeOf(states: readonly StateResiduals[]): number {
  const values = states.flatMap(({ tests, band, builtIn }) => [
    ...tests.flatMap(({ test: { result }, over, expected }) =>
      result.kind === "between" ? [result.from / expected, result.to / expected] : [over],
    ),
    ...band,
    builtIn,
  ]);
  return 1.12 * Math.max(5, ...values.map((over) => Math.abs(percent(over))));
}

/** Level of each test in its row, in the order of the tests. */
function levelsOf(tests: readonly TestResidual[], near: number): number[] {
  const levels = new Array<number>(tests.length).fill(0);
  const last: number[] = [];
  const extents = tests.map((one) => extentOf(one, near));
  const order = tests.map((_, i) => i).sort((a, b) => extents[a]![0] - extents[b]![0]);
  for (const i of order) {
    const [from, to] = extents[i]!;
    let level = last.findIndex((end) => from - end >= near);
    if (level < 0) level = last.length < MOST_LEVELS ? last.length : i % MOST_LEVELS;
    last[level] = to;
    levels[i] = level;
  }
  return levels;
}

/** Room that a mark takes along the axis [%]; an arrow takes some beside its mark too. */
function extentOf({ test: { result }, over, expected }: TestResidual, arrow: number): [from: number, to: number] {
  if (result.kind === "between") return [percent(result.from / expected), percent(result.to / expected)];
  const at = percent(over);
  return [at - (result.kind === "below" ? arrow : 0), at + (result.kind === "above" ? arrow : 0)];
}

const boxOf = ([from, to]: readonly number[], top: number, bottom: number): PlotPoint[] => [
  [from!, top],
  [to!, top],
  [to!, bottom - 0.1],
  [from!, bottom - 0.1],
];

function curvesOf({ state, top, bottom }: Row): PlotCurve[] {
  const upright = (at: number): PlotPoint[] => [
    [at, top + WORDS_HEIGHT],
    [at, bottom - 0.1],
  ];
  return [
    { points: upright(0), tone: "own", width: 1.5, dash: [] },
    { points: upright(percent(state.builtIn)), tone: "builtIn", width: 2, dash: [5, 3] },
  ];
}

function marksOf({ state, levels, top }: Row): Mark[] {
  return state.tests.map(({ test, expected }, i) =>
    testMark(test, (load) => [percent(load / expected), top + WORDS_HEIGHT + LEVEL_HEIGHT * (levels[i]! + 0.5)]),
  );
}

function rowsOf({ state, tests, band, builtIn }: StateResiduals): PlotRow[] {
  return [
    ...tests.map(({ test, expected, over }) =>
      testRow(test, { state, expected_kN: kN(expected), over_expected: digits(over) }),
    ),
    {
      series: "18 of 20 further samples",
      state,
      low_over_expected: digits(band[0]),
      high_over_expected: digits(band[1]),
    },
    { series: "built in, without tests", state, over_expected: digits(builtIn) },
  ];
}
