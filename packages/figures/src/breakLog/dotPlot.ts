/** Every test of a group as a mark on one axis of loads, a row for each way of failing. */
import type { BreakTest, GroupReport } from "@secondline/strength";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { roundTicks } from "../roundTicks.ts";
import { rowsOf } from "../rows.ts";
import { type Scale, scaleOf } from "../scale.ts";
import { circle, group, path, type Shape, text } from "../shapes/shape.ts";

const ROW_HEIGHT = 22;
const AXIS_HEIGHT = 38;
const DOT_RADIUS = 5;

type Result = BreakTest["result"];

export interface TestDot {
  readonly result: Result;
  /** Load at which it is drawn [N]. */
  readonly load: number;
  /** The test in words. */
  readonly title: string;
  /** The test is an outlier. */
  readonly odd: boolean;
}

export interface DotPlot {
  /** Tests by how they failed. */
  readonly modes: readonly { readonly name: string; readonly dots: readonly TestDot[] }[];
  /** Largest load of the axis, the same for all groups of a log [N]. */
  readonly most: number;
  /** The characteristic value [N]; undefined while it is not known. */
  readonly bounds: GroupReport["characteristic"] | undefined;
  readonly wide: boolean;
  readonly width: number;
}

export interface DotPlotDrawing {
  readonly height: number;
  readonly shapes: readonly Shape[];
}

export function dotPlot({ modes, most, bounds, wide, width }: DotPlot): DotPlotDrawing {
  const x = scaleOf(0, most, wide ? 176 : 8, width - 14);
  const head = bounds ? 34 : 6;
  const rows: Shape[] = [];
  let bottom = head;
  for (const { name, dots } of modes) {
    const top = bottom + (wide ? 0 : 16);
    const reach = dots.map(({ load }) => ({ from: x.px(load) - 7, to: x.px(load) + 7 }));
    const places = rowsOf(reach, 1);
    const height = (Math.max(0, ...places) + 1) * ROW_HEIGHT;
    rows.push(
      text(name, 0, wide ? top + height / 2 + 4 : top - 2, { styled: ["lane", "halo"] }),
      ...dots.map((dot, i) => testDot(dot, x, top + places[i]! * ROW_HEIGHT + ROW_HEIGHT / 2)),
    );
    bottom = top + height + 4;
  }
  const ticks = roundTicks(0, most / 1000, Math.floor(width / 90)).flatMap((tick) => [
    path(`M${x.px(tick * 1000)} ${head}V${bottom}`, { styled: "rule" }),
    text(String(tick), x.px(tick * 1000), bottom + 16, { styled: "soft", textAnchor: "middle" }),
  ]);
  const axis = [
    path(`M${x.px(0)} ${bottom}H${x.px(most)}`, { styled: "axis" }),
    text(sayBreakLog("dotPlot.breakingLoadKn"), x.px(most), bottom + 32, { styled: "soft", textAnchor: "end" }),
  ];
  const reached = bounds ? boundLines(bounds, x, head, bottom) : [];
  return { height: bottom + AXIS_HEIGHT, shapes: [...ticks, ...axis, ...reached, ...rows] };
}

function testDot({ result, load, title, odd }: TestDot, x: Scale, y: number): Shape {
  const at = x.px(load);
  const ends = result.kind === "between" ? ([x.px(result.from), x.px(result.to)] as const) : ([at, at] as const);
  const apart = [
    circle(at, y, 9, { fill: "none", stroke: "failsInk", strokeWidth: 1.75 }),
    text(sayBreakLog("dotPlot.apartOthers"), at + 13, y + 4, { styled: "halo", fill: "failsInk" }),
  ];
  return group([...resultMark(result.kind, ends, y), ...(odd ? apart : [])], { title });
}

/**
 * A mark. Dot: the piece broke here. Open with an arrow of this length: it holds at least, or at most, this much. Bar: it broke
 * between the two ends. `y`: height of the middle; all in [px].
 */
export function resultMark(
  kind: Result["kind"],
  [at, to]: readonly [number, number],
  y: number,
  arrow = 16,
): readonly Shape[] {
  const open = circle(at, y, DOT_RADIUS, { fill: "paper", stroke: "ink", strokeWidth: 1.5 });
  const shaft = (way: 1 | -1) =>
    path(`M${at + way * DOT_RADIUS} ${y}h${way * arrow}m${-way * 5}-4 ${way * 5} 4${way > 0 ? "" : " "}${-way * 5} 4`, {
      fill: "none",
      stroke: "ink",
      strokeWidth: 1.5,
    });
  switch (kind) {
    case "exact":
      return [circle(at, y, DOT_RADIUS, { fill: "accent" })];
    case "above":
      return [shaft(1), open];
    case "below":
      return [shaft(-1), open];
    case "between":
      return [
        path(`M${at} ${y - 5}v10M${at} ${y}H${to}M${to} ${y - 5}v10`, {
          stroke: "ink",
          strokeWidth: 1.75,
          fill: "none",
        }),
      ];
  }
}

/** The characteristic value as a line. */
function boundLines({ at75, at95 }: GroupReport["characteristic"], x: Scale, top: number, bottom: number): Shape[] {
  const mark = (value: number, words: string, anchor: "start" | "end", y: number) => [
    path(`M${x.px(value)} ${y + 3}V${bottom}`, {
      stroke: "failsInk",
      strokeWidth: 1.25,
      strokeDasharray: anchor === "end" ? "2 3" : "7 4",
    }),
    text(words, x.px(value) + (anchor === "end" ? -4 : 4), y + 6, {
      styled: "halo",
      textAnchor: x.px(value) < 120 ? "start" : anchor,
      fill: "failsInk",
    }),
  ];
  return [
    ...mark(at95.value, sayBreakLog("dotPlot.bound95"), "end", top - 26),
    ...mark(at75.value, sayBreakLog("dotPlot.bound75"), "start", top - 12),
  ];
}
