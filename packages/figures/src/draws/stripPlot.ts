/** The loads behind an E as a strip of dots, with E, its interval and R marked. */
import type { LoadStrip } from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { sayDraws, stripSentences } from "@secondline/words/draws";
import { piled } from "../piled.ts";
import type { Plot, PlotRule } from "../plot/plot.ts";
import { roundTicks } from "../roundTicks.ts";

/** Two dots nearer than this share of the axis are piled up [-]. */
const PILED_SHARE = 0.022;
/** Height of a dot in its pile, and the least of the strip [px]. */
const DOT_HEIGHT = 8;
const LEAST_STRIP_HEIGHT = 34;
/** An R farther off than this many times the loads is not drawn: it would leave no room for the dots [-]. */
const FARTHEST_STRENGTH_RATIO = 4;
const AXIS_ROOM_RATIO = 1.06;
const E_DASH = [6, 3];

/** `title`: the part and what-if of the strip. `limits` stand in for R where there is no R [N]. */
export function stripPlot(strip: LoadStrip, title: string, of: string, limits: readonly number[] = []): Plot {
  const { loads, demand, interval, strength5 } = strip;
  const inside = Math.max(loads.at(-1)!, interval[1]);
  const isBeyond = strength5 !== undefined && strength5 > FARTHEST_STRENGTH_RATIO * inside;
  const ends = [inside, ...(strength5 === undefined || isBeyond ? [] : [strength5]), ...limits.slice(0, 1)];
  const to = (AXIS_ROOM_RATIO * Math.max(...ends)) / 1000;
  const levels = piled(
    loads.map((load) => load / 1000),
    PILED_SHARE * to,
  );
  const top = Math.max(...levels) + 1;
  const height = Math.max(LEAST_STRIP_HEIGHT, DOT_HEIGHT * top);
  const rules: PlotRule[] = [
    { x: demand / 1000, tone: "ink", dash: E_DASH, label: sayDraws("strip.demand", { load: quantity.load(demand) }) },
    ...(strength5 === undefined || isBeyond
      ? []
      : [bound(strength5, sayDraws("strip.strength", { strength: quantity.strength(strength5) }))]),
    ...limits
      .filter((limit) => limit / 1000 <= to)
      .map((limit) => bound(limit, sayDraws("strip.limit", { load: quantity.load(limit) }))),
  ];
  const [low, high] = interval.map((end) => end / 1000) as [number, number];
  return {
    figure: "strip",
    of,
    title,
    notes: [
      ...stripSentences(strip),
      ...(isBeyond ? [sayDraws("strip.beyond", { strength: quantity.strength(strength5) })] : []),
    ],
    x: {
      label: sayDraws("strip.axis"),
      from: 0,
      to,
      ticks: roundTicks(0, to, 6).map((at) => ({ at, text: quantity.number(at) })),
    },
    y: { label: "", from: 0, to: height / DOT_HEIGHT, ticks: [] },
    strength: "x",
    bands: [
      [
        [low, 0],
        [low, height / DOT_HEIGHT],
        [high, height / DOT_HEIGHT],
        [high, 0],
      ],
    ],
    curves: [],
    marks: loads.map((load, i) => ({ kind: "run", at: [load / 1000, levels[i]! + 0.6] })),
    rules,
    texts: [],
    height,
    rows: [
      ...loads.map((load) => ({ series: "run", load_kN: load / 1000 })),
      { series: "E", load_kN: demand / 1000 },
      ...(strength5 === undefined ? [] : [{ series: "R", load_kN: strength5 / 1000 }]),
    ],
  };
}

const bound = (newtons: number, label: string): PlotRule => ({ x: newtons / 1000, tone: "bound", dash: [], label });
