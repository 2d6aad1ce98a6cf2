/** The ink of one note: dimension lines as on a plan, arrows, marks. */

import type { Ink } from "../../ink/ink.ts";
import type { Palette } from "../../palette.ts";
import { LABEL_SIDES, type Label, type LabelEdges } from "./labelLayout.ts";
import type { SceneNote } from "./notes.ts";

/**
 * Writes x, y [px] and, third, 1 when the point lies before the camera; of a point behind it, a place far out of the
 * picture on its side. xyz [m].
 */
export type Projector = (x: number, y: number, z: number, out: Float64Array) => void;

/** The ink, the colours and the projection of the picture. */
export interface NotesCanvas {
  readonly ink: Ink;
  readonly palette: Palette;
  readonly project: Projector;
  /** Largest force, the scale of the arrows [N]. */
  readonly largest: number;
  readonly width: number;
  readonly height: number;
  /** Size of the letters over their usual size [-]. */
  readonly lettering: number;
  /** Covered edges of the picture. */
  readonly covered: readonly LabelEdges[];
}

const p = new Float64Array(3);
const q = new Float64Array(3);
const w = new Float64Array(3);
/** Distance of a mark from the rim of the picture [px]. */
const RIM_DISTANCE = 16;

/** Draws the note's ink and gives the label its point; false when no part of the note is in the picture. */
export function drawNote(sheet: NotesCanvas, note: SceneNote, label: Label): boolean {
  sheet.project(note.a[0]!, note.a[1]!, note.a[2]!, p);
  const mark = note.kind === "break" || note.kind === "pointer";
  if (p[2] !== 1 && !mark) return false;
  label.x = p[0]!;
  label.y = p[1]!;
  if (note.kind === "dimension") return drawDimension(sheet, note, label);
  if (note.kind === "arrow") return drawArrow(sheet, note, label);
  if (mark) return drawMark(sheet, note, label);
  label.gap = note.short === "" ? 6 : 10;
  return true;
}

function drawDimension({ ink, palette, project, width, height }: NotesCanvas, note: SceneNote, label: Label): boolean {
  project(note.b[0]!, note.b[1]!, note.b[2]!, q);
  if (q[2] !== 1 || Math.hypot(q[0]! - p[0]!, q[1]! - p[1]!) < 16) return false;
  if (Math.max(p[0]!, q[0]!) < 0 || Math.min(p[0]!, q[0]!) > width) return false;
  if (Math.max(p[1]!, q[1]!) < 0 || Math.min(p[1]!, q[1]!) > height) return false;
  ink.lineCap = "butt";
  for (let pass = 0; pass < 2; pass++) {
    ink.strokeStyle = pass === 0 ? palette.paper : palette.ink;
    ink.globalAlpha = pass === 0 ? 0.7 : 0.9;
    ink.lineWidth = pass === 0 ? 3.5 : 1;
    ink.beginPath();
    ink.moveTo(p[0]!, p[1]!);
    ink.lineTo(q[0]!, q[1]!);
    tick(ink, p);
    tick(ink, q);
    ink.stroke();
  }
  ink.globalAlpha = 0.6;
  ink.lineWidth = 1;
  ink.strokeStyle = palette.softInk;
  ink.beginPath();
  drawWitnessLine(ink, note, note.a, p, project);
  drawWitnessLine(ink, note, note.b, q, project);
  ink.stroke();
  ink.globalAlpha = 1;
  // The number stands at the middle of the visible piece of the line.
  const top = Math.max(Math.min(p[1]!, q[1]!), 0);
  const bottom = Math.min(Math.max(p[1]!, q[1]!), height);
  const share = q[1]! === p[1]! ? 0.5 : (0.5 * (top + bottom) - p[1]!) / (q[1]! - p[1]!);
  label.x = p[0]! + share * (q[0]! - p[0]!);
  label.y = p[1]! + share * (q[1]! - p[1]!);
  label.gap = 7;
  return true;
}

/** Oblique stroke at the end of a dimension line. */
function tick(ink: Ink, at: Float64Array): void {
  ink.moveTo(at[0]! - 4.5, at[1]! + 4.5);
  ink.lineTo(at[0]! + 4.5, at[1]! - 4.5);
}

function drawWitnessLine(ink: Ink, note: SceneNote, end: Float64Array, at: Float64Array, project: Projector): void {
  project(note.witness, end[1]!, end[2]!, w);
  if (w[2] !== 1) return;
  const dx = at[0]! - w[0]!;
  const dy = at[1]! - w[1]!;
  const length = Math.hypot(dx, dy);
  if (length < 12) return;
  const from = 6 / length;
  ink.moveTo(w[0]! + from * dx, w[1]! + from * dy);
  ink.lineTo(at[0]! + (dx * 6) / length, at[1]! + (dy * 6) / length);
}

function drawArrow({ ink, palette, project, largest }: NotesCanvas, note: SceneNote, label: Label): boolean {
  project(note.a[0]! + 0.2 * note.b[0]!, note.a[1]! + 0.2 * note.b[1]!, note.a[2]! + 0.2 * note.b[2]!, q);
  const dx = q[0]! - p[0]!;
  const dy = q[1]! - p[1]!;
  const length = Math.hypot(dx, dy);
  if (length < 0.05) return false;
  const ux = dx / length;
  const uy = dy / length;
  const long = Math.min(22 + 62 * Math.min(note.force / largest, 1), (note.limit * length) / 0.2);
  if (long < 15) return false;
  const x = p[0]! + ux * long;
  const y = p[1]! + uy * long;
  for (let pass = 0; pass < 2; pass++) {
    ink.strokeStyle = pass === 0 ? palette.paper : palette.accent;
    ink.fillStyle = ink.strokeStyle;
    ink.lineWidth = pass === 0 ? 6 : 2.5;
    ink.globalAlpha = pass === 0 ? 0.85 : 1;
    ink.beginPath();
    ink.moveTo(p[0]! + 3 * ux, p[1]! + 3 * uy);
    ink.lineTo(x - 9 * ux, y - 9 * uy);
    ink.stroke();
    const r = pass === 0 ? 2 : 0;
    ink.beginPath();
    ink.moveTo(x + r * ux, y + r * uy);
    ink.lineTo(x - 11 * ux - (5 + r) * uy, y - 11 * uy + (5 + r) * ux);
    ink.lineTo(x - 11 * ux + (5 + r) * uy, y - 11 * uy - (5 + r) * ux);
    ink.closePath();
    ink.fill();
  }
  ink.globalAlpha = 1;
  label.x = x;
  label.y = y;
  label.gap = 8;
  // Ahead of the arrow, not on its shaft.
  if (Math.abs(ux) > 0.5) label.slot = ux < 0 ? LABEL_SIDES.left : LABEL_SIDES.right;
  // If two arrows meet on one rope, the upper one's words stand above it, the lower one's below.
  else label.slot = uy > 0 ? LABEL_SIDES.rightAbove : LABEL_SIDES.rightBelow;
  return true;
}

/** Mark of a parted place: a crossed circle; outside the picture an arrowhead at the rim. A pointer is an open circle. */
function drawMark({ ink, palette, width, height, covered }: NotesCanvas, note: SceneNote, label: Label): boolean {
  const x = Math.min(Math.max(label.x, RIM_DISTANCE), width - RIM_DISTANCE);
  let y = Math.min(Math.max(label.y, RIM_DISTANCE), height - RIM_DISTANCE);
  const outside = x !== label.x || y !== label.y;
  if (outside && !note.clings) return false;
  const angle = Math.atan2(label.y - y, label.x - x);
  for (const box of covered) {
    const under =
      x > box.left - RIM_DISTANCE &&
      x < box.right + RIM_DISTANCE &&
      y > box.top - RIM_DISTANCE &&
      y < box.bottom + RIM_DISTANCE;
    if (outside && under) y = box.top < height / 2 ? box.bottom + RIM_DISTANCE : box.top - RIM_DISTANCE;
  }
  const colour = note.kind === "break" ? palette.fails : palette.accent;
  if (outside) drawRimArrow(ink, x, y, angle, colour, palette.paper);
  else drawCircle(ink, x, y, note.kind === "break", colour, palette.paper);
  label.x = x;
  label.y = y;
  label.gap = 15;
  return true;
}

function drawRimArrow(ink: Ink, x: number, y: number, angle: number, colour: string, paper: string): void {
  ink.save();
  ink.translate(x, y);
  ink.rotate(angle);
  ink.beginPath();
  ink.moveTo(10, 0);
  ink.lineTo(-5, -7);
  ink.lineTo(-5, 7);
  ink.closePath();
  ink.lineWidth = 3;
  ink.strokeStyle = paper;
  ink.stroke();
  ink.fillStyle = colour;
  ink.fill();
  ink.restore();
}

function drawCircle(ink: Ink, x: number, y: number, crossed: boolean, colour: string, paper: string): void {
  const r = crossed ? 8 : 13;
  for (let pass = 0; pass < 2; pass++) {
    ink.strokeStyle = pass === 0 ? paper : colour;
    ink.lineWidth = pass === 0 ? 5 : 2;
    ink.beginPath();
    ink.arc(x, y, r, 0, 2 * Math.PI);
    if (crossed) {
      const c = 0.5 * r;
      ink.moveTo(x - c, y - c);
      ink.lineTo(x + c, y + c);
      ink.moveTo(x - c, y + c);
      ink.lineTo(x + c, y - c);
    }
    ink.stroke();
  }
}
