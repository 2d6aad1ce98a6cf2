/** Bars of the marks on a webbing, lane by lane: the visible shape of each, and the area that a pointer can take hold of. */
import type { Scale } from "../scale.ts";
import { path, rect, type Shape, text } from "../shapes/shape.ts";
import { KIND_COLOUR, type MarkKind } from "./patterns.ts";

/** Least width of a bar, or of its end, that a pointer can hit [px]. */
const LEAST_HIT_WIDTH = 24;
const PATTERN_WIDTH = 8;

/** A bar as it is laid in its lane [px]. */
export interface LaneBar {
  readonly item: { readonly kind: MarkKind; readonly label: string; readonly later: boolean };
  readonly left: number;
  readonly width: number;
  /** Length of the bar out of sight. */
  readonly beyond: { readonly left: number; readonly right: number };
  readonly label: { readonly x: number; readonly anchor: "start" | "middle" | "end" };
}

/** The line over a lane and its name. */
export const laneHead = (name: string, top: number, x: Scale, wide: boolean): readonly Shape[] => [
  path(`M0 ${top - 1}H${x.px(x.to)}`, { styled: "rule" }),
  text(name, 0, top + (wide ? 17 : 14), { styled: ["lane", "halo"] }),
];

export function laneBar({ item, left, width, beyond, label }: LaneBar, y: number, height: number): readonly Shape[] {
  const colour = KIND_COLOUR[item.kind];
  const hit = Math.max(LEAST_HIT_WIDTH, width);
  const cut = beyond.left + beyond.right;
  return [
    rect({ x: left - (hit - width) / 2, y: y - 3, width: hit, height: height + 6 }, { fill: "transparent" }),
    rect(
      { x: left - beyond.left, y, width: width + cut, height },
      {
        rx: 2,
        clip: cut > 0 ? "sight" : undefined,
        fill: width > PATTERN_WIDTH ? { pattern: item.kind } : colour,
        stroke: colour,
        styled: item.later ? "later" : undefined,
      },
    ),
    rect({ x: left - 3, y: y - 3, width: width + 6, height: height + 6 }, { rx: 4, styled: "focus" }),
    text(item.label, label.x, y + height / 2 + 4, { styled: "halo", textAnchor: label.anchor }),
  ];
}

/** The end of a bar, which a pointer can draw out. */
export const laneEnd = (at: number, y: number, height: number): readonly Shape[] => [
  rect({ x: at - LEAST_HIT_WIDTH / 2, y: y - 3, width: LEAST_HIT_WIDTH, height: height + 6 }, { fill: "transparent" }),
  rect({ x: at - 6, y: y - 5, width: 12, height: height + 10 }, { rx: 4, styled: "focus" }),
  rect(
    { x: at - 3, y: y - 2, width: 6, height: height + 4 },
    { rx: 3, fill: "raised", stroke: "accent", strokeWidth: 2 },
  ),
];
