/** Strength of a line along its length, with a mark on it, and the load at each place at a moment. */

import { scaleOf } from "../scale.ts";
import { path, rect, type Shape, text } from "../shapes/shape.ts";

/** At most: a wider picture of it is a larger one [px]. */
export const RIBBON_WIDTH = 640;
/** A ribbon narrower than this is lower, and has the two entries of its key under one another [px]. */
const KEY_WIDTH = 520;
const [HEIGHT, NARROW_HEIGHT] = [132, 112];
/** From the foot of the plot to that of the ribbon, and from one entry of the key to the next [px]. */
const [FOOT, KEY_ROW] = [26, 16];
const LEFT = 44;
const RIGHT_MARGIN = 12;
const TOP = 22;

export const ribbonHeight = (width: number): number => (width < KEY_WIDTH ? NARROW_HEIGHT : HEIGHT);
const TICKS = [0, 10_000, 20_000, 30_000];

export interface RibbonFacts {
  /** Of the drawing [px]. */
  readonly width: number;
  /** Strength that 95 % of such webbing reaches, from A on [m], [N]. */
  readonly zones: readonly { readonly to: number; readonly strength5: number }[];
  readonly length: number;
  /** End of the scale [N]. */
  readonly top: number;
  readonly mark?: { readonly from: number; readonly to: number };
  readonly loads: readonly { readonly from: number; readonly to: number; readonly force: number }[];
  readonly words: {
    readonly holds: string;
    readonly carries: string;
    /** Strength of the mark, and its load. */
    readonly mark: string | undefined;
  };
}

export function alongRibbon({ width, zones, length, top, mark, loads, words }: RibbonFacts): readonly Shape[] {
  const isNarrow = width < KEY_WIDTH;
  const right = width - RIGHT_MARGIN;
  const bottom = ribbonHeight(width) - FOOT - (isNarrow ? KEY_ROW : 0);
  const x = scaleOf(0, length, LEFT, right);
  const y = scaleOf(0, top, bottom, TOP);
  const holds = zones.map(
    ({ to, strength5 }, i) => `${i === 0 ? `M${x.px(0)} ${y.px(strength5)}` : `V${y.px(strength5)}`}H${x.px(to)}`,
  );
  const carried = loads.map(
    ({ from, to, force }, i) => `${i === 0 ? "M" : "L"}${x.px((from + to) / 2)} ${y.px(force)}`,
  );
  const onMark = mark && { x: x.px(mark.from), y: TOP, width: Math.max(6, x.px(mark.to) - x.px(mark.from)) };
  const foot = bottom + FOOT - 8;
  const key = (at: number, y: number, styled: string, said: string) => [
    path(`M${LEFT + at} ${y - 4}h24`, { styled }),
    text(said, LEFT + at + 30, y),
  ];
  return [
    ...TICKS.filter((force) => force <= top).flatMap((force) => [
      path(`M${LEFT} ${y.px(force)}H${right}`, { styled: "grid" }),
      text(`${force / 1000} kN`, LEFT - 6, y.px(force) + 4, { textAnchor: "end" }),
    ]),
    ...(onMark ? [rect({ ...onMark, height: bottom - TOP }, { styled: "mark" })] : []),
    path(holds.join(""), { styled: "holds" }),
    path(carried.join(""), { styled: "carries" }),
    ...(mark && words.mark !== undefined ? [text(words.mark, x.px(mark.to) + 8, TOP - 8, { styled: "strong" })] : []),
    text("A", LEFT, foot),
    text("B", right, foot, { textAnchor: "end" }),
    ...key(isNarrow ? 30 : 60, foot, "holds", words.holds),
    ...key(isNarrow ? 30 : 340, isNarrow ? foot + KEY_ROW : foot, "carries", words.carries),
  ];
}
