/** Draws a plot with an ink: axes, shaded areas, curves, tests, and words that do not cover one another. */
import type { Ink } from "../ink/ink.ts";
import { labelHeights } from "../labelHeights.ts";
import type { Palette } from "../palette.ts";
import { brokenLines } from "../sheet.ts";
import { type Frame, frameOf, LABEL_FONT, LINE_HEIGHT, namedCurves } from "./frame.ts";
import { drawMark } from "./marks.ts";
import type { Plot, PlotCurve, PlotPoint, Tone } from "./plot.ts";

/** Height that a plot takes at a width [px]. */
export const plotHeight = (plot: Plot, width: number, ink: Pick<Ink, "font" | "measureText">): number =>
  frameOf(plot, width, ink).height;

/** Draws from the upper left corner, `width` wide [px]. */
export function drawPlot(ink: Ink, plot: Plot, width: number, palette: Palette): void {
  const frame = frameOf(plot, width, ink);
  ink.save();
  ink.globalAlpha = 1;
  ink.font = LABEL_FONT;
  drawGrid(ink, plot, frame, palette);
  ink.save();
  ink.beginPath();
  ink.rect(frame.left, frame.top, frame.right - frame.left, frame.bottom - frame.top);
  ink.clip();
  for (const band of plot.bands) {
    ink.fillStyle = palette.accentWash;
    trace(ink, band, frame);
    ink.closePath();
    ink.fill();
  }
  for (const curve of plot.curves) drawCurve(ink, curve, frame, palette);
  ink.restore();
  drawStrips(ink, plot, frame, palette);
  drawRules(ink, plot, frame, palette);
  for (const mark of plot.marks) drawMark(ink, mark, plot.strength, frame, palette);
  for (const one of plot.texts) drawText(ink, one, frame, palette);
  if (frame.beside) nameBeside(ink, plot, frame, palette);
  else nameBelow(ink, plot, frame, palette);
  ink.restore();
}

export function toneColour(tone: Tone, palette: Palette): string {
  switch (tone) {
    case "own":
      return palette.accent;
    case "builtIn":
      return palette.softInk;
    case "bound":
      return palette.failsInk;
    case "ink":
      return palette.ink;
  }
}

function drawGrid(ink: Ink, { x, y }: Plot, { left, right, top, bottom, ...frame }: Frame, palette: Palette): void {
  ink.lineWidth = 1;
  ink.setLineDash([]);
  ink.strokeStyle = palette.rule;
  for (const { at } of y.ticks) line(ink, [left, frame.y.px(at)], [right, frame.y.px(at)]);
  for (const { at } of x.ticks) line(ink, [frame.x.px(at), top], [frame.x.px(at), bottom]);
  ink.strokeStyle = palette.softInk;
  line(ink, [left, bottom], [right, bottom]);
  ink.fillStyle = palette.softInk;
  ink.textAlign = "right";
  for (const { at, text } of y.ticks) ink.fillText(text, left - 6, frame.y.px(at) + 4);
  ink.textAlign = "center";
  for (const { at, text } of x.ticks) ink.fillText(text, frame.x.px(at), bottom + 17);
  ink.textAlign = "right";
  ink.fillText(x.label, right, bottom + 35);
  ink.textAlign = "left";
  ink.fillText(y.label, 4, 14);
}

function drawCurve(ink: Ink, { points, tone, width, dash }: PlotCurve, frame: Frame, palette: Palette): void {
  ink.strokeStyle = toneColour(tone, palette);
  ink.lineWidth = width;
  ink.setLineDash(dash);
  trace(ink, points, frame);
  ink.stroke();
  ink.setLineDash([]);
}

/** A thick line along the axis; a single value gets one as wide as a mark. */
function drawStrips(ink: Ink, { strips = [] }: Plot, { x, bottom }: Frame, palette: Palette): void {
  ink.strokeStyle = palette.holds;
  ink.lineWidth = 5;
  for (const { from, to } of strips) {
    const [a, b] = [x.px(from), x.px(to)];
    const least = Math.max(0, 8 - (b - a)) / 2;
    line(ink, [a - least, bottom], [b + least, bottom]);
  }
}

/** Writes words from their left end; if they have no room in one line, in lines that end at their place. */
function drawText(
  ink: Ink,
  { at, text, off = 4 }: Plot["texts"][number],
  { x, y, right }: Frame,
  palette: Palette,
): void {
  const left = x.px(at[0]) + off;
  const lines = brokenLines(text, right - left, (part) => ink.measureText(part).width);
  ink.fillStyle = palette.ink;
  ink.textAlign = "left";
  lines.forEach((line, i) => {
    ink.fillText(line, left, y.px(at[1]) - (lines.length - 1 - i) * (LINE_HEIGHT - 1));
  });
}

/**
 * Lines across the plot. Each has its name in a row of its own above the plot, towards the side that has room; a name hides
 * lines that pass behind it.
 */
function drawRules(
  ink: Ink,
  { rules, x }: Plot,
  { top, bottom, left, right, ...frame }: Frame,
  palette: Palette,
): void {
  const placed = rules.map((rule, i) => {
    const [place, foot] = [frame.x.px(rule.x), top - 4 - LINE_HEIGHT * (rules.length - 1 - i)];
    const wide = ink.measureText(rule.label).width + 5;
    const toLeft = rule.x > (x.from + x.to) / 2 ? place - wide > left - 30 : place + wide > right;
    return { ...rule, place, foot, wide, toLeft };
  });
  ink.lineWidth = 1.5;
  for (const { place, foot, tone, dash } of placed) {
    ink.strokeStyle = toneColour(tone, palette);
    ink.setLineDash(dash);
    line(ink, [place, foot - 9], [place, bottom]);
  }
  ink.setLineDash([]);
  for (const { place, foot, tone, label, wide, toLeft } of placed) {
    ink.fillStyle = palette.paper;
    ink.fillRect(toLeft ? place - wide - 3 : place + 2, foot - 11, wide + 1, LINE_HEIGHT - 2);
    ink.fillStyle = toneColour(tone, palette);
    ink.textAlign = toLeft ? "right" : "left";
    ink.fillText(label, place + (toLeft ? -5 : 5), foot);
  }
}

function nameBeside(ink: Ink, plot: Plot, frame: Frame, palette: Palette): void {
  const named = namedCurves(plot);
  const ends = named.map(({ points }) => clamped(frame.y.px(points.at(-1)![1]), frame.top, frame.bottom));
  const heights = labelHeights(ends, LINE_HEIGHT - 1);
  const over = Math.max(0, Math.max(0, ...heights) - frame.bottom);
  ink.textAlign = "left";
  named.forEach(({ label, tone }, i) => {
    ink.fillStyle = toneColour(tone, palette);
    ink.fillText(label, frame.right + 8, heights[i]! + 4 - over);
  });
}

/** On narrow paper: a piece of each line, and its name. */
function nameBelow(ink: Ink, plot: Plot, frame: Frame, palette: Palette): void {
  ink.textAlign = "left";
  namedCurves(plot).forEach(({ label, tone, width, dash }, i) => {
    const y = frame.bottom + 52 + LINE_HEIGHT * i - 4;
    ink.strokeStyle = ink.fillStyle = toneColour(tone, palette);
    ink.lineWidth = width;
    ink.setLineDash(dash);
    line(ink, [frame.left, y - 4], [frame.left + 28, y - 4]);
    ink.setLineDash([]);
    ink.fillText(label, frame.left + 36, y);
  });
}

const clamped = (value: number, from: number, to: number) => Math.min(to, Math.max(from, value));

function trace(ink: Ink, points: readonly PlotPoint[], { x, y }: Frame): void {
  ink.beginPath();
  points.forEach(([px, py], i) => {
    if (i === 0) ink.moveTo(x.px(px), y.px(py));
    else ink.lineTo(x.px(px), y.px(py));
  });
}

function line(ink: Ink, [x0, y0]: PlotPoint, [x1, y1]: PlotPoint): void {
  ink.beginPath();
  ink.moveTo(x0, y0);
  ink.lineTo(x1, y1);
  ink.stroke();
}
