/** Places of the parts of a plot at a width of the paper [px]. */
import { type Ink, SANS } from "../ink/ink.ts";
import { type Scale, scaleOf } from "../scale.ts";
import type { Plot, PlotCurve } from "./plot.ts";

export const LABEL_FONT = `400 13px ${SANS}`;
/** Height of a line of words [px]. */
export const LINE_HEIGHT = 16;
/** Distance of words from the top of the frame, and room for the axis and its label below it [px]. */
const HEAD_HEIGHT = 8;
const FOOT_HEIGHT = 42;
const LABEL_GAP = 8;
const EDGE_WIDTH = 12;
/** Paper narrower than this names the curves under the plot, not beside it [px]. */
const NARROW_WIDTH = 560;

export interface Frame {
  readonly x: Scale;
  readonly y: Scale;
  /** Edges of the space between the axes. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Curves are named beside their ends, or in lines under the axis. */
  readonly beside: boolean;
  readonly height: number;
}

export const namedCurves = (plot: Plot): readonly (PlotCurve & { readonly label: string })[] =>
  plot.curves.flatMap((curve) => (curve.label === undefined ? [] : [{ ...curve, label: curve.label }]));

/** `ink` measures the words that need room. */
export function frameOf(plot: Plot, width: number, ink: Pick<Ink, "font" | "measureText">): Frame {
  ink.font = LABEL_FONT;
  const widest = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => ink.measureText(text).width));
  const named = namedCurves(plot);
  const beside = width >= NARROW_WIDTH;
  const left = EDGE_WIDTH + widest(plot.y.ticks.map(({ text }) => text)) + LABEL_GAP;
  const right =
    width -
    (beside && named.length > 0 ? LABEL_GAP + widest(named.map(({ label }) => label)) + EDGE_WIDTH : EDGE_WIDTH + 4);
  const top = HEAD_HEIGHT + LINE_HEIGHT * (plot.rules.length + (plot.y.label === "" ? 0 : 1));
  // Words in the plot take two lines on narrow paper.
  const bottom = top + plot.height * (beside || plot.texts.length === 0 ? 1 : 1.6);
  return {
    x: scaleOf(plot.x.from, plot.x.to, left, right),
    y: scaleOf(plot.y.from, plot.y.to, bottom, top),
    left,
    right,
    top,
    bottom,
    beside,
    height: bottom + FOOT_HEIGHT + (beside ? 0 : LINE_HEIGHT * named.length),
  };
}
