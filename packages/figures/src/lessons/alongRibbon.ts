/** Strength of a line along its length, with a mark on it, and the load at each place at a moment. */

import { scaleOf } from "../scale.ts";
import { path, rect, type Shape, text } from "../shapes/shape.ts";

export const RIBBON_SIZE = { width: 640, height: 132 };
const LEFT = 44;
const RIGHT = RIBBON_SIZE.width - 12;
const TOP = 22;
const BOTTOM = RIBBON_SIZE.height - 26;
const TICKS = [0, 10_000, 20_000, 30_000];

export interface RibbonFacts {
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

export function alongRibbon({ zones, length, top, mark, loads, words }: RibbonFacts): readonly Shape[] {
  const x = scaleOf(0, length, LEFT, RIGHT);
  const y = scaleOf(0, top, BOTTOM, TOP);
  const holds = zones.map(
    ({ to, strength5 }, i) => `${i === 0 ? `M${x.px(0)} ${y.px(strength5)}` : `V${y.px(strength5)}`}H${x.px(to)}`,
  );
  const carried = loads.map(
    ({ from, to, force }, i) => `${i === 0 ? "M" : "L"}${x.px((from + to) / 2)} ${y.px(force)}`,
  );
  const onMark = mark && { x: x.px(mark.from), y: TOP, width: Math.max(6, x.px(mark.to) - x.px(mark.from)) };
  const foot = RIBBON_SIZE.height - 8;
  const key = (at: number, styled: string, said: string) => [
    path(`M${LEFT + at} ${foot - 4}h24`, { styled }),
    text(said, LEFT + at + 30, foot),
  ];
  return [
    ...TICKS.filter((force) => force <= top).flatMap((force) => [
      path(`M${LEFT} ${y.px(force)}H${RIGHT}`, { styled: "grid" }),
      text(`${force / 1000} kN`, LEFT - 6, y.px(force) + 4, { textAnchor: "end" }),
    ]),
    ...(onMark ? [rect({ ...onMark, height: BOTTOM - TOP }, { styled: "mark" })] : []),
    path(holds.join(""), { styled: "holds" }),
    path(carried.join(""), { styled: "carries" }),
    ...(mark && words.mark !== undefined ? [text(words.mark, x.px(mark.to) + 8, TOP - 8, { styled: "strong" })] : []),
    text("A", LEFT, foot),
    text("B", RIGHT, foot, { textAnchor: "end" }),
    ...key(60, "holds", words.holds),
    ...key(340, "carries", words.carries),
  ];
}
