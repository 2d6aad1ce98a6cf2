import type { TimeRange } from "./plotGrid.ts";

/** Room around the plot area inside its figure [px]. */
const AXIS_WIDTH = 44;
const AXIS_HEIGHT = 24;
const HEADROOM = 6;
const LANE_HEIGHT = 24;

/** Places in a plot's figure [px]; `left` and `top` are the plot area's, `lanes` hold the words of events. */
export interface PlotFrame {
  readonly figureWidth: number;
  readonly figureHeight: number;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly gutter: number;
  readonly lanes: number;
  readonly laneHeight: number;
  readonly axisWidth: number;
  readonly axisHeight: number;
  readonly headroom: number;
  /** Size of the letters at the axes over their usual size [-]. */
  readonly lettering: number;
}

/** Room for the names at the right ends [px]. */
export interface Gutter {
  readonly wide: number;
  readonly compact: number;
}

export interface PlotRoom {
  /** Of the figure [px]. */
  readonly width: number;
  readonly height: number;
  readonly compact: boolean;
  readonly gutter: Gutter;
  /** Default: 1 [-]. */
  readonly lettering?: number;
}

export function plotFrame(room: PlotRoom): PlotFrame {
  const { width: figureWidth, height: figureHeight, compact, lettering = 1 } = room;
  const [axisWidth, axisHeight] = [AXIS_WIDTH * lettering, AXIS_HEIGHT * lettering];
  const gutter = compact ? room.gutter.compact : room.gutter.wide;
  const lanes = figureHeight < 190 ? 1 : 2;
  const top = lanes * LANE_HEIGHT + HEADROOM;
  return {
    figureWidth,
    figureHeight,
    left: axisWidth,
    top,
    width: Math.max(figureWidth - axisWidth - gutter, 40),
    height: Math.max(figureHeight - top - axisHeight, 40),
    gutter,
    lanes,
    laneHeight: LANE_HEIGHT,
    axisWidth,
    axisHeight,
    headroom: HEADROOM,
    lettering,
  };
}

/** Distance from the plot area's left edge [px]. */
export function xOf(time: number, range: TimeRange, frame: PlotFrame): number {
  return ((time - range.from) / (range.to - range.from)) * frame.width;
}

export function timeOf(x: number, range: TimeRange, frame: PlotFrame): number {
  return range.from + (x / frame.width) * (range.to - range.from);
}

/** Distance from the plot area's top edge [px]. */
export function yOf(value: number, top: number, frame: PlotFrame): number {
  return (1 - value / top) * frame.height;
}
