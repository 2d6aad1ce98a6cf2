/**
 * Tests as marks. Dot: the piece broke here. Open, with an arrow: it holds at least, or at most, this much. Bar: it broke
 * somewhere between.
 */
import type { Ink } from "../ink/ink.ts";
import type { Palette } from "../palette.ts";
import type { Frame } from "./frame.ts";
import type { Mark, PlotPoint } from "./plot.ts";

/** Radius of a dot [px]. */
const DOT_RADIUS = 4.5;
/** Radius of one dot among many [px]. */
const RUN_RADIUS = 3;
/** Length of the arrow of a test that did not break [px]. */
const ARROW_LENGTH = 15;

export function drawMark(ink: Ink, mark: Mark, strength: "x" | "y", frame: Frame, palette: Palette): void {
  const at: PlotPoint = [frame.x.px(mark.at[0]), frame.y.px(mark.at[1])];
  ink.lineWidth = 1.5;
  ink.strokeStyle = palette.ink;
  switch (mark.kind) {
    case "broke":
    case "best":
      ink.fillStyle = palette.accent;
      circle(ink, at);
      ink.fill();
      break;
    case "atLeast":
      arrow(ink, at, strength === "x" ? [1, 0] : [0, -1]);
      openCircle(ink, at, palette);
      break;
    case "below":
      arrow(ink, at, strength === "x" ? [-1, 0] : [0, 1]);
      openCircle(ink, at, palette);
      break;
    case "keeps":
      circle(ink, at);
      ink.fillStyle = palette.holdsInk;
      ink.fill();
      break;
    case "open":
      half(ink, at, palette);
      break;
    case "keepsNot":
      cross(ink, at, palette);
      break;
    case "beaten":
      openCircle(ink, at, palette);
      break;
    case "run":
      ink.fillStyle = palette.accent;
      circle(ink, at, RUN_RADIUS);
      ink.fill();
      break;
    case "between":
      bar(ink, at, mark.to === undefined ? at : [frame.x.px(mark.to[0]), frame.y.px(mark.to[1])]);
      break;
  }
}

function circle(ink: Ink, [x, y]: PlotPoint, radius = DOT_RADIUS): void {
  ink.beginPath();
  ink.arc(x, y, radius, 0, 2 * Math.PI);
}

function openCircle(ink: Ink, at: PlotPoint, palette: Palette): void {
  circle(ink, at);
  ink.fillStyle = palette.paper;
  ink.fill();
  ink.stroke();
}

/** Half filled: the limit may be kept or not. */
function half(ink: Ink, [x, y]: PlotPoint, palette: Palette): void {
  circle(ink, [x, y]);
  ink.fillStyle = palette.paper;
  ink.fill();
  ink.strokeStyle = palette.thinInk;
  ink.stroke();
  ink.beginPath();
  ink.arc(x, y, DOT_RADIUS, -Math.PI / 2, Math.PI / 2);
  ink.fillStyle = palette.thinInk;
  ink.fill();
}

function cross(ink: Ink, [x, y]: PlotPoint, palette: Palette): void {
  ink.strokeStyle = palette.failsInk;
  ink.lineWidth = 2;
  ink.beginPath();
  for (const side of [-1, 1]) {
    ink.moveTo(x - DOT_RADIUS, y - side * DOT_RADIUS);
    ink.lineTo(x + DOT_RADIUS, y + side * DOT_RADIUS);
  }
  ink.stroke();
}

/** From the mark towards [dx, dy]. */
function arrow(ink: Ink, [x, y]: PlotPoint, [dx, dy]: PlotPoint): void {
  const [tipX, tipY] = [x + dx * (DOT_RADIUS + ARROW_LENGTH), y + dy * (DOT_RADIUS + ARROW_LENGTH)];
  ink.beginPath();
  ink.moveTo(x, y);
  ink.lineTo(tipX, tipY);
  for (const side of [-1, 1]) {
    ink.moveTo(tipX - 5 * dx + 3.5 * side * dy, tipY - 5 * dy + 3.5 * side * dx);
    ink.lineTo(tipX, tipY);
  }
  ink.stroke();
}

function bar(ink: Ink, [x0, y0]: PlotPoint, [x1, y1]: PlotPoint): void {
  const length = Math.hypot(x1 - x0, y1 - y0) || 1;
  const [acrossX, acrossY] = [(-(y1 - y0) / length) * 5, ((x1 - x0) / length) * 5];
  ink.beginPath();
  for (const [x, y] of [
    [x0, y0],
    [x1, y1],
  ] as const) {
    ink.moveTo(x - acrossX, y - acrossY);
    ink.lineTo(x + acrossX, y + acrossY);
  }
  ink.moveTo(x0, y0);
  ink.lineTo(x1, y1);
  ink.stroke();
}
