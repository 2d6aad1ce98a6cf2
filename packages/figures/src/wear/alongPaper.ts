/** The webbing flat on the table from its marked end: metres, the loaded span, and its marks on a day. */
import type { WebbingState } from "@secondline/strength";
import { sayWear } from "@secondline/words/page/wear";
import { roundTicks } from "../roundTicks.ts";
import type { Scale } from "../scale.ts";
import { group, path, rect, type Shape, text, unspoken } from "../shapes/shape.ts";
import { KIND_COLOUR, type MarkKind } from "./patterns.ts";
import { spanDimension } from "./spanDimension.ts";

/** Height that the ribbon and the dimension line over it take [px]. */
export const RIBBON_HEIGHT = 78;
const RIBBON_TOP = 42;
const RIBBON_THICKNESS = 20;
/** A mark of a hand's width on a long webbing would be too thin to see [px]. */
const LEAST_MARK_WIDTH = 4;
/** From a mark of this width on its pattern can be told [px]. */
const PATTERN_WIDTH = 8;
/** Upper end of the shade over unloaded webbing [px]. */
const SHADE_TOP = 36;

export interface AlongPaper {
  readonly x: Scale;
  readonly state: WebbingState;
  /** Lower end of the whole drawing [px]. */
  readonly bottom: number;
  readonly width: number;
  readonly wide: boolean;
}

/** Stretches are cut off where the clip "sight" ends. */
export const alongPaper = (paper: AlongPaper): readonly Shape[] => [grid(paper), ...span(paper), ribbon(paper)];

/** Metres from the marked end, under everything. */
function grid({ x, bottom, width }: AlongPaper): Shape {
  const ticks = roundTicks(x.from, x.to, Math.max(3, Math.floor((x.px(x.to) - x.px(x.from)) / 70)));
  return unspoken([
    ...ticks.flatMap((tick) => [
      path(`M${x.px(tick)} ${RIBBON_HEIGHT + 4}V${bottom}`, { styled: "rule" }),
      text(String(tick), x.px(tick), bottom + 16, { textAnchor: "middle", styled: "soft" }),
    ]),
    path(`M${x.px(x.from)} ${bottom}H${x.px(x.to)}`, { styled: "axis" }),
    text(sayWear("alongPaper.axis"), Math.min(x.px(x.from), width - 190), bottom + 34, { styled: "soft" }),
  ]);
}

/** Webbing outside of the loaded span is shaded. The span's ends run through all lanes, or are named at the edge. */
function span({ x, state: { placement, to }, bottom }: AlongPaper): readonly Shape[] {
  if (!placement) return [];
  const shade = (from: number, end: number) =>
    rect(
      { x: x.px(from), y: SHADE_TOP, width: Math.max(0, x.px(end) - x.px(from)), height: bottom - SHADE_TOP },
      { fill: { pattern: "off" } },
    );
  const ends = [placement.from, placement.to].filter((end) => end >= x.from && end <= x.to);
  const { path: line, texts } = spanDimension(placement, x, 12);
  return [
    unspoken([
      group([shade(0, placement.from), shade(placement.to, to)], { clip: "sight" }),
      ...ends.map((end) =>
        path(`M${x.px(end)} 20V${bottom}`, {
          stroke: "ink",
          strokeWidth: 1.25,
          strokeDasharray: "1 3",
          fill: "none",
          strokeLinecap: "round",
        }),
      ),
      ...(line === undefined ? [] : [path(line, { stroke: "ink", fill: "none" })]),
      ...texts.map(({ x: at, anchor, words }) =>
        text(words, at, 16, { styled: ["serif", "halo"], textAnchor: anchor }),
      ),
    ]),
  ];
}

/** The webbing itself with its marks, and a thread through the end that the record measures from. */
function ribbon({ x, state: { placement, from, to, marks }, wide }: AlongPaper): Shape {
  const strip = (left: number, right: number) => ({
    x: left,
    y: RIBBON_TOP,
    width: right - left,
    height: RIBBON_THICKNESS,
  });
  const name = text(sayWear("ribbon.webbing"), 0, RIBBON_TOP + 14, { styled: "lane" });
  const on = marks.map((mark) => {
    const [left, right] = [x.px(mark.from), x.px(mark.to)];
    const half = Math.max(LEAST_MARK_WIDTH, right - left) / 2;
    const kind = markKind(mark.kind);
    const broad = 2 * half > PATTERN_WIDTH;
    return rect(strip((left + right) / 2 - half, (left + right) / 2 + half), {
      fill: broad ? { pattern: kind } : KIND_COLOUR[kind],
      stroke: KIND_COLOUR[kind],
      strokeWidth: broad ? 0.75 : 0,
    });
  });
  const end = x.px(from);
  const body = [
    rect(strip(end, x.px(to)), { fill: "raised", stroke: "edge" }),
    ...(placement
      ? [rect(strip(x.px(placement.from), x.px(placement.to)), { fill: "accentWash", stroke: "ink" })]
      : []),
    ...on,
    path(`M${end + 3} ${RIBBON_TOP - 4}v${RIBBON_THICKNESS + 8}M${end} ${RIBBON_TOP - 4}h6`, {
      stroke: "failsInk",
      strokeWidth: 2,
      fill: "none",
    }),
  ];
  return unspoken([...(wide ? [name] : []), group(body, { clip: "sight" })]);
}

function markKind(kind: WebbingState["marks"][number]["kind"]): MarkKind {
  if (kind === "clampMark") return "clamp";
  if (kind === "fallZone") return "falls";
  return kind === "stitching" ? "sewn" : "damage";
}

/** The whole webbing, small, with its loaded span. A window shows the stretch `sight`, from and to [px]. */
export function overview(state: WebbingState, x: Scale): Shape {
  const { placement, from, to } = state;
  const webbing = { x: x.px(from), y: 9, width: x.px(to) - x.px(from), height: 6 };
  const loaded = placement && [x.px(placement.from), x.px(placement.to)];
  return unspoken([
    rect(webbing, { fill: "raised", stroke: "edge" }),
    ...(loaded
      ? [path(`M${loaded[0]} 12H${loaded[1]}M${loaded[0]} 6v12M${loaded[1]} 6v12`, { stroke: "ink", fill: "none" })]
      : []),
  ]);
}

/** The window over the stretch in sight, to be taken hold of. */
export function sightWindow(left: number, right: number): readonly Shape[] {
  const width = Math.max(4, right - left);
  return [
    rect({ x: left, y: 2, width, height: 20 }, { rx: 3, styled: "window" }),
    rect({ x: left - 3, y: 0, width: width + 6, height: 24 }, { rx: 5, styled: "focus" }),
  ];
}
