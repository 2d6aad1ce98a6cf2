/** Axes, grid, events and names of a plot for a picture that is kept. On the screen canvas and elements show them. */

import { quantity } from "@secondline/words";
import { type Ink, SANS } from "../ink/ink.ts";
import type { Palette } from "../palette.ts";
import { roundTicks } from "../roundTicks.ts";
import type { EndLabel } from "./endLabel.ts";
import type { EventMark } from "./eventMarks.ts";
import { flagLanes, spreadLabels } from "./labelLayout.ts";
import { type PlotFrame, xOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";

export const PLOT_FONT = `400 13px ${SANS}`;
const NAME_HEIGHT = 22;
const LEADER_WIDTH = 18;

/** A plot's place and palette. */
export interface PlotSheet {
  readonly ink: Ink;
  readonly frame: PlotFrame;
  readonly palette: Palette;
  readonly range: TimeRange;
  /** Upper end of the value axis. */
  readonly top: number;
}

export function drawAxes({ ink, frame, palette, range, top }: PlotSheet, words: (value: number) => string): void {
  const { left, width, height } = frame;
  ink.font = `400 12px ${SANS}`;
  ink.lineWidth = 1;
  ink.strokeStyle = palette.rule;
  for (const value of roundTicks(0, top, Math.max(Math.round(height / 45), 2))) {
    const y = frame.top + (1 - value / top) * height;
    segment(ink, left, y, left + width, y);
    ink.fillStyle = palette.softInk;
    ink.textAlign = "right";
    ink.fillText(words(value), left - 6, y + 4);
  }
  ink.textAlign = "center";
  for (const time of roundTicks(range.from, range.to, Math.max(Math.round(width / 90), 2))) {
    const x = left + xOf(time, range, frame);
    segment(ink, x, frame.top, x, frame.top + height);
    ink.fillText(`${time} s`, x, frame.top + height + 17);
  }
  ink.textAlign = "left";
}

/** Events in words above the plot, with a hairline down to their moment. */
export function drawEvents({ ink, frame, palette, range }: PlotSheet, marks: readonly EventMark[]): void {
  const seen = marks.filter(({ time }) => time >= range.from && time <= range.to);
  ink.font = PLOT_FONT;
  const wishes = seen.map(({ time, label, rank }) => ({
    at: xOf(time, range, frame),
    size: ink.measureText(label).width + 14,
    rank,
  }));
  const places = flagLanes(wishes, frame.lanes, frame.width);
  seen.forEach((mark, i) => {
    const place = places[i];
    const x = frame.left + wishes[i]!.at;
    ink.globalAlpha = 0.7;
    ink.strokeStyle = palette.softInk;
    ink.lineWidth = 1;
    segment(ink, x, place ? (place.lane + 1) * frame.laneHeight - 4 : frame.top - 8, x, frame.top + frame.height);
    ink.globalAlpha = 1;
    if (!place) return;
    ink.fillStyle = palette.ink;
    const atLeft = place.left < wishes[i]!.at - 1;
    ink.textAlign = atLeft ? "right" : "left";
    ink.fillText(mark.label, atLeft ? x - 4 : x + 4, place.lane * frame.laneHeight + 16);
  });
  ink.textAlign = "left";
}

/** The moment that the page showed. */
export function drawCursor({ ink, frame, palette, range }: PlotSheet, time: number): void {
  if (time < range.from || time > range.to) return;
  const x = frame.left + xOf(time, range, frame);
  ink.strokeStyle = palette.ink;
  ink.lineWidth = 1.5;
  segment(ink, x, frame.top, x, frame.top + frame.height);
  ink.fillStyle = palette.ink;
  ink.fillRect(x - 32, frame.top + frame.height + 2, 64, 20);
  ink.fillStyle = palette.paper;
  ink.font = `500 12px ${SANS}`;
  ink.textAlign = "center";
  ink.fillText(quantity.seconds(time, 3), x, frame.top + frame.height + 16);
  ink.textAlign = "left";
}

/** Names at the right ends, each with the number that `told` gives. */
export function drawNames(
  { ink, frame, palette }: PlotSheet,
  labels: readonly EndLabel[],
  told: (label: EndLabel) => string,
): void {
  const centres = spreadLabels(
    labels.map(({ y }) => ({ at: y, size: NAME_HEIGHT })),
    -frame.headroom,
    frame.height + frame.axisHeight,
  );
  const left = frame.left + frame.width;
  labels.forEach((label, i) => {
    const y = frame.top + centres[i]!;
    ink.strokeStyle = label.colour;
    ink.lineWidth = 1;
    ink.setLineDash([]);
    ink.globalAlpha = 0.6;
    segment(ink, left + 1, frame.top + label.y, left + LEADER_WIDTH - 3, y);
    ink.globalAlpha = 1;
    drawSwatch(ink, label, left + LEADER_WIDTH, y);
    ink.font = `500 13px ${SANS}`;
    ink.fillStyle = label.colour;
    ink.textAlign = "left";
    ink.fillText(label.name, left + LEADER_WIDTH + 25, y + 4.5);
    ink.font = PLOT_FONT;
    ink.fillStyle = palette.ink;
    ink.textAlign = "right";
    ink.fillText(told(label), left + frame.gutter - 8, y + 4.5);
  });
  ink.textAlign = "left";
}

function drawSwatch(ink: Ink, { dash, fill, width, colour }: EndLabel, x: number, y: number): void {
  ink.strokeStyle = colour;
  if (dash === null) {
    ink.lineWidth = 1;
    ink.fillStyle = fill ?? colour;
    ink.fillRect(x, y - 5, 18, 10);
    ink.beginPath();
    ink.rect(x, y - 5, 18, 10);
    ink.stroke();
    return;
  }
  ink.lineWidth = width;
  ink.setLineDash([...dash]);
  segment(ink, x, y, x + 18, y);
  ink.setLineDash([]);
}

function segment(ink: Ink, x0: number, y0: number, x1: number, y1: number): void {
  ink.beginPath();
  ink.moveTo(x0, y0);
  ink.lineTo(x1, y1);
  ink.stroke();
}
