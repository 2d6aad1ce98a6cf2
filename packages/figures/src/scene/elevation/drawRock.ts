/** The ground in section: stone that fades downwards, its surface in ink, short oblique strokes beneath it. */

import { type Ink, SERIF } from "../../ink/ink.ts";
import type { Palette } from "../../palette.ts";
import type { Gap } from "../shape/gap.ts";
import type { StoneColours } from "../stone.ts";
import type { FlatView } from "./flatView.ts";
import { mixColour } from "./mixColour.ts";

export function drawRock(
  ink: Ink,
  gap: Gap,
  view: FlatView,
  palette: Palette,
  stone: StoneColours,
  width: number,
  height: number,
): void {
  const px = (x: number) => width / 2 + (x - view.x) * view.scale;
  const py = (z: number) => height / 2 - (z - view.z) * view.scale;
  trace(ink, gap, px, py);
  ink.lineTo(px(gap.x[gap.x.length - 1]!), height + 200);
  ink.lineTo(px(gap.x[0]!), height + 200);
  ink.closePath();
  const fill = ink.createLinearGradient(0, py(Math.max(gap.edgeA, gap.edgeB)), 0, py(gap.floor - 8));
  fill.addColorStop(0, mixColour(palette.paper, stone.shade, 0.58));
  fill.addColorStop(1, mixColour(palette.paper, stone.shade, 0.12));
  ink.fillStyle = fill;
  ink.fill();
  ink.save();
  ink.clip();
  drawBeds(ink, gap, view, palette, stone, width, py);
  ink.restore();
  drawStrokes(ink, gap, view, palette, px, py);
  trace(ink, gap, px, py);
  ink.strokeStyle = palette.ink;
  ink.lineWidth = 1.4;
  ink.lineJoin = "round";
  if (!gap.known) ink.setLineDash([6, 5]);
  ink.stroke();
  ink.setLineDash([]);
}

function trace(ink: Ink, gap: Gap, px: (x: number) => number, py: (z: number) => number): void {
  ink.beginPath();
  for (let i = 0; i < gap.x.length; i++) ink.lineTo(px(gap.x[i]!), py(gap.z[i]!));
}

/** Level lines through the rock, as contour lines are in the picture in space. */
function drawBeds(
  ink: Ink,
  gap: Gap,
  view: FlatView,
  palette: Palette,
  stone: StoneColours,
  width: number,
  py: (z: number) => number,
): void {
  const interval = [1, 2, 5, 10, 20, 50].find((step) => step * view.scale > 13) ?? 100;
  const top = Math.ceil(Math.max(...gap.z) / interval) * interval;
  ink.strokeStyle = stone.contour;
  for (let z = top; z > gap.floor - 12 * interval; z -= interval) {
    ink.globalAlpha = Math.round(z / interval) % 5 === 0 ? 0.5 : 0.22;
    ink.lineWidth = 1;
    ink.beginPath();
    ink.moveTo(0, Math.round(py(z)) + 0.5);
    ink.lineTo(width, Math.round(py(z)) + 0.5);
    ink.stroke();
    if (Math.round(z / interval) % 5 === 0) writeHeight(ink, z, palette, width, py(z));
  }
  ink.globalAlpha = 1;
}

/** Height against anchor A, at the right rim as on a section drawing. */
function writeHeight(ink: Ink, z: number, palette: Palette, width: number, y: number): void {
  ink.globalAlpha = 0.9;
  ink.fillStyle = palette.softInk;
  ink.font = `500 12px ${SERIF}`;
  ink.textAlign = "right";
  ink.fillText(`${z > 0 ? "+" : z < 0 ? "\u2212" : ""}${Math.abs(z)} m`, width - 6, y - 4);
  ink.textAlign = "left";
}

function drawStrokes(
  ink: Ink,
  gap: Gap,
  view: FlatView,
  palette: Palette,
  px: (x: number) => number,
  py: (z: number) => number,
): void {
  ink.strokeStyle = palette.softInk;
  ink.lineWidth = 1;
  ink.globalAlpha = 0.55;
  ink.beginPath();
  for (let i = 1; i < gap.x.length; i++) {
    const dx = gap.x[i]! - gap.x[i - 1]!;
    const dz = gap.z[i]! - gap.z[i - 1]!;
    const length = Math.hypot(dx, dz) * view.scale;
    // The rock lies to the right hand of the section as it runs from A to B.
    const nx = dz / (Math.hypot(dx, dz) || 1);
    const nz = -dx / (Math.hypot(dx, dz) || 1);
    for (let s = 7; s < length; s += 14) {
      const x = px(gap.x[i - 1]! + (dx * s) / length);
      const y = py(gap.z[i - 1]! + (dz * s) / length);
      ink.moveTo(x, y);
      ink.lineTo(x + 7 * nx - 4 * nz, y - 7 * nz - 4 * nx);
    }
  }
  ink.stroke();
  ink.globalAlpha = 1;
}
