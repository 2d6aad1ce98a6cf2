/** Strength of a stock over the dose of one wear: own tests, the built-in curve, and the curve by both together. */

import type { LineStock } from "@secondline/rig";
import type { Retention, RetentionValue } from "@secondline/strength";
import { broughtIn, quantity, stockName, tellBasis } from "@secondline/words";
import type { BreakLogWords } from "@secondline/words/breakLog";
import type { Plot, PlotCurve, PlotPoint, PlotRow, Tone } from "../plot/plot.ts";
import { roundTicks } from "../roundTicks.ts";
import { digits, kN, testMark, testRow } from "./testMarks.ts";

/** Steps of a curve along the doses [-]. */
const CURVE_STEPS = 48;
/** Room for marks of new pieces, over the range of doses [-]. */
const LEFT_ROOM = 0.015;
/** A part reaches the lower curves with this probability [-]. */
const LOWER_CURVE_PROBABILITY = 0.95;

interface At {
  readonly dose: number;
  readonly counts: RetentionValue;
  readonly builtIn: RetentionValue;
}

export function retentionPlot(stock: LineStock, retention: Retention, words: BreakLogWords): Plot {
  const { say } = words;
  const { tested, validTo, unit, cause, basis } = retention;
  // Steps are closest at small doses, where the curves are steepest.
  const along = Array.from({ length: CURVE_STEPS + 1 }, (_, i): At => {
    const dose = validTo * (i / CURVE_STEPS) ** 1.5;
    return {
      dose,
      counts: retention.posterior(dose, LOWER_CURVE_PROBABILITY),
      builtIn: retention.prior(dose, LOWER_CURVE_PROBABILITY),
    };
  });
  const last = Math.max(...tested.map(({ dose }) => dose));
  const loads = tested.map(({ test: { result } }) => (result.kind === "between" ? result.to : result.value));
  const most = 1.06 * Math.max(...loads, ...along.flatMap(({ counts, builtIn }) => [counts.upper, builtIn.central]));
  const curve = (
    label: string,
    of: (at: At) => number,
    tone: Tone,
    width: number,
    dash: readonly number[],
  ): PlotCurve => ({
    points: along.map((at): PlotPoint => [at.dose, of(at)]),
    tone,
    width,
    dash,
    label,
  });
  return {
    figure: "retention",
    of: stock.name,
    title: say("figure.retention.title", {
      stock: stockName(stock.name),
      unit: broughtIn(unit),
      cause: broughtIn(cause),
    }),
    notes: [
      say("figure.retention.notes", { count: tested.length, basis: tellBasis(basis.note) }),
      ...(last < validTo
        ? [say("figure.retention.beyond", { dose: quantity.number(digits(last)), unit: broughtIn(unit) })]
        : []),
    ],
    x: {
      label: say("figure.retention.x", { unit: broughtIn(unit) }),
      from: -LEFT_ROOM * validTo,
      to: validTo,
      ticks: ticksOf(0, validTo, 1, 8),
    },
    y: { label: say("figure.load"), from: 0, to: most, ticks: ticksOf(0, most, 1000, 5) },
    strength: "y",
    bands: [
      [
        ...along.map(({ dose, counts }): PlotPoint => [dose, counts.lower]),
        ...[...along].reverse().map(({ dose, counts }): PlotPoint => [dose, counts.upper]),
      ],
    ],
    curves: [
      curve(say("figure.retention.builtIn"), ({ builtIn }) => builtIn.central, "builtIn", 1.5, [7, 4]),
      curve(say("figure.retention.builtInLow"), ({ builtIn }) => builtIn.lower, "builtIn", 1.25, [2, 3]),
      curve(say("figure.retention.counts"), ({ counts }) => counts.central, "own", 2.5, []),
      curve(say("figure.retention.low"), ({ counts }) => counts.lower, "own", 1.5, []),
    ],
    marks: tested.map(({ dose, test }) => testMark(test, (load) => [dose, load])),
    rules:
      last < 0.98 * validTo
        ? [{ x: last, tone: "builtIn", dash: [2, 3], label: say("figure.retention.tested", { dose: digits(last) }) }]
        : [],
    texts: [],
    height: 260,
    rows: [
      ...tested.map(({ dose, test }) => testRow(test, { dose: digits(dose), dose_unit: unit })),
      ...rowsOf("counts", along, unit, ({ counts }) => counts),
      ...rowsOf("built in", along, unit, ({ builtIn }) => builtIn),
    ],
  };
}

const ticksOf = (from: number, to: number, scale: number, most: number) =>
  roundTicks(from / scale, to / scale, most).map((tick) => ({ at: tick * scale, text: quantity.number(tick) }));

function rowsOf(series: string, along: readonly At[], unit: string, of: (at: At) => RetentionValue): PlotRow[] {
  return along.map((at): PlotRow => {
    const { central, lower, upper } = of(at);
    return {
      series,
      dose: digits(at.dose),
      dose_unit: unit,
      strength_kN: kN(central),
      low_kN: kN(lower),
      high_kN: kN(upper),
    };
  });
}
