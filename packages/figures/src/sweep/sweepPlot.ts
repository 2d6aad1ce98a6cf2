/** A sweep as a plot: of one number the curve with its band and limits, of two the region in which the limit is kept. */

import type { Rig } from "@secondline/rig";
import { isApart, type Knob, knobText, type Swept, type SweptPoint } from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { howFarWords as words } from "@secondline/words/howFar";
import type { Axis, Mark, Plot, PlotCurve, PlotPoint, PlotRow } from "../plot/plot.ts";
import { roundTicks } from "../roundTicks.ts";

/** Height of the space between the axes [px]. */
const AXES_HEIGHT = 280;
/** Approximate number of ticks on an axis [-]. */
const TICK_COUNT = 7;
/** Room above and below the curves, as a share of their height [-]. */
const HEADROOM_SHARE = 0.08;
const LIMIT_DASH = [7, 4];
/** Room beside the outermost of separate values, as a share of a step [-]. */
const APART_ROOM = 0.5;

/** Plot of a sweep of one number or of two; `names`: the numbers' names for the axes. */
export function sweepPlot(rig: Rig, swept: Swept, names: readonly string[]): Plot {
  const [first, second] = swept.knobs;
  return second ? mapPlot(rig, swept, [first!, second], names) : curvePlot(rig, swept, first!, names[0]!);
}

const commonWords = (rig: Rig, swept: Swept) =>
  ({ figure: "sweep", of: swept.rigName, title: words.head(rig, swept), strength: "y", height: AXES_HEIGHT }) as const;

function curvePlot(rig: Rig, swept: Swept, knob: Knob, name: string): Plot {
  const { points, line, limits, kept } = swept;
  const levels = points.flatMap(({ values, curve }) => (curve ? [{ at: values[0]!, ...curve }] : []));
  const curve = line ?? [];
  const [x, y] = [knobAxis(knob, name), valueAxis(swept)];
  return {
    ...commonWords(rig, swept),
    notes: [words.say(isApart(knob) ? "curve.apart" : "curve.how")],
    x,
    y,
    bands: curve.length > 1 ? [bandOf(curve)] : [],
    curves: [
      // A limit that lies far off is told in words.
      ...limits
        .filter(({ limit: { value } }) => value >= y.from && value <= y.to)
        .map(
          ({ limit }): PlotCurve => ({
            points: [
              [x.from, limit.value],
              [x.to, limit.value],
            ],
            tone: "bound",
            width: 1.5,
            dash: LIMIT_DASH,
            label: words.limitName(limit.kind),
          }),
        ),
      ...(curve.length > 1
        ? [
            {
              points: curve.map(({ at, value }): PlotPoint => [at, value]),
              tone: "own",
              width: 2.25,
              dash: [],
              label: words.say("curve.name"),
            } as const,
          ]
        : []),
    ],
    marks: [
      ...(isApart(knob)
        ? levels.map(({ at, low, high }): Mark => ({ kind: "between", at: [at, low], to: [at, high] }))
        : []),
      ...points.flatMap(({ values, own }): Mark[] => (own ? [{ kind: "broke", at: [values[0]!, own.value] }] : [])),
    ],
    rules: limits
      .flatMap(({ crossings }) => crossings)
      .map(({ at, kept: side }) => ({
        x: at,
        tone: "ink",
        dash: [2, 3],
        label: words.sweep.knobValue(knob, at, side === "above" ? "up" : "down"),
      })),
    strips: kept ?? [],
    texts: [],
    rows: points.map((point): PlotRow => rowOf(swept, point)),
  };
}

/** The outline runs there and back along the ends of the band. */
const bandOf = (line: readonly { readonly at: number; readonly low: number; readonly high: number }[]): PlotPoint[] => [
  ...line.map(({ at, low }): PlotPoint => [at, low]),
  ...[...line].reverse().map(({ at, high }): PlotPoint => [at, high]),
];

/** With room for every band, and for limits that lie near. */
function valueAxis({ what, points, line = [], limits }: Swept): Axis {
  const all = [
    ...points.flatMap(({ curve, own }) => [curve?.low, curve?.high, own?.value]),
    ...line.flatMap(({ low, high }) => [low, high]),
  ].filter((value) => value !== undefined);
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const near = limits
    .map(({ limit }) => limit.value)
    .filter((value) => value > least - 2 * (most - least) && value < most + 2 * (most - least));
  const [low, high] = [Math.min(least, ...near), Math.max(most, ...near)];
  const room = HEADROOM_SHARE * (high - low || Math.abs(high) || 1);
  const scale = what.kind === "load" ? 1000 : 1;
  const [from, to] = [low - room, high + room];
  return {
    label: axisName(what.kind),
    from,
    to,
    ticks: roundTicks(from / scale, to / scale, 6).map((at) => ({ at: at * scale, text: quantity.number(at) })),
  };
}

const axisName = (kind: Swept["what"]["kind"]): string => words.say(`axis.${kind}`);

function knobAxis(knob: Knob, name: string): Axis {
  const { from, to, unit } = knob;
  const room = isApart(knob) ? APART_ROOM : 0;
  const ticks = isApart(knob)
    ? Array.from({ length: to - from + 1 }, (_, i) => from + i)
    : roundTicks(from, to, TICK_COUNT).filter((at) => at >= from && at <= to);
  return {
    label: unit === "" ? name : `${name} [${unit}]`,
    from: from - room,
    to: to + room,
    ticks: ticks.map((at) => ({ at, text: quantity.number(at) })),
  };
}

const STATE_MARKS = { keeps: "keeps", open: "open", below: "keepsNot" } as const;

function mapPlot(rig: Rig, swept: Swept, [first, second]: readonly [Knob, Knob], names: readonly string[]): Plot {
  const { points, region } = swept;
  const [x, y] = [knobAxis(first, names[0]!), widened(knobAxis(second, names[1]!))];
  const outline = region?.outline ?? [];
  return {
    ...commonWords(rig, swept),
    notes: [words.say("map.how")],
    x: widened(x, 0.22),
    y,
    bands: isApart(second) ? [] : trapezoids(outline),
    curves: isApart(second)
      ? outline.flatMap(({ at, kept }) => kept.map(({ from, to }) => edge([from, at], [to, at])))
      : outline.slice(1).flatMap(({ at, kept }, i) => edges(outline[i]!, { at, kept }, first)),
    marks: points.flatMap(({ values }, i): Mark[] => {
      const state = region?.states[i];
      return state ? [{ kind: STATE_MARKS[state], at: [values[0]!, values[1]!] }] : [];
    }),
    rules: [],
    texts: points.flatMap(({ values, curve }) =>
      curve
        ? [{ at: [values[0]!, values[1]!] as PlotPoint, text: words.sweep.value(swept.what, curve.value), off: 10 }]
        : [],
    ),
    height: Math.min(420, Math.max(AXES_HEIGHT, 46 * new Set(points.map(({ values }) => values[1])).size)),
    rows: points.map((point): PlotRow => rowOf(swept, point)),
  };
}

/** Marks at the edge, and the words beside them, find room. */
function widened(axis: Axis, after = 0.1): Axis {
  const wide = axis.to - axis.from;
  return { ...axis, from: axis.from - 0.1 * wide, to: axis.to + after * wide };
}

type Row = NonNullable<Swept["region"]>["outline"][number];

/** Areas between two rows of the outline: one for every pair of stretches that touch. */
const trapezoids = (outline: readonly Row[]): readonly (readonly PlotPoint[])[] =>
  outline.slice(1).flatMap((row, i) => {
    const before = outline[i]!;
    return touching(before, row).map(([a, b]): readonly PlotPoint[] => [
      [a.from, before.at],
      [a.to, before.at],
      [b.to, row.at],
      [b.from, row.at],
    ]);
  });

/** The sides of the region; not where the range itself ends. */
function edges(before: Row, row: Row, { from, to }: Knob): readonly PlotCurve[] {
  return touching(before, row).flatMap(([a, b]) => [
    ...(a.from > from || b.from > from ? [edge([a.from, before.at], [b.from, row.at])] : []),
    ...(a.to < to || b.to < to ? [edge([a.to, before.at], [b.to, row.at])] : []),
  ]);
}

const touching = (before: Row, row: Row) =>
  before.kept.flatMap((a) => row.kept.flatMap((b) => (a.from <= b.to && b.from <= a.to ? [[a, b] as const] : [])));

const edge = (from: PlotPoint, to: PlotPoint): PlotCurve => ({
  points: [from, to],
  tone: "own",
  width: 2.25,
  dash: [],
});

function rowOf({ knobs, what }: Swept, { values, curve, own, runs }: SweptPoint): PlotRow {
  return {
    series: what.kind,
    ...Object.fromEntries(knobs.map((knob, k) => [knob.name, knobText(knob, values[k]!)])),
    curve: curve?.value,
    low: curve?.low,
    high: curve?.high,
    own: own?.value,
    runs,
  };
}
