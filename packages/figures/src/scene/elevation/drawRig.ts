/** Lines, leash, ring, anchors and walker in the elevation. */

import type { Ink } from "../../ink/ink.ts";
import type { Palette } from "../../palette.ts";
import type { LiveFrame } from "../liveFrame.ts";
import type { AnchorShape } from "../shape/anchorShape.ts";
import type { FineLine } from "../shape/fineLine.ts";
import { hangRope } from "../shape/slackRope.ts";
import { tensionCss } from "../shape/tensionColour.ts";

export interface FlatPen {
  readonly ink: Ink;
  readonly palette: Palette;
  readonly table: Uint8Array;
  /** End of the tension scale [N]. */
  readonly scaleEnd: number;
  readonly px: (x: number) => number;
  readonly py: (z: number) => number;
  /** [px/m] */
  readonly scale: number;
}

const MAIN_WIDTH = 4;
const BACKUP_WIDTH = 3.2;
const ROPE_POINTS = 25;
const rope = new Float32Array(ROPE_POINTS * 3);

export function drawLine(pen: FlatPen, fine: FineLine, ghost?: string): void {
  const { ink } = pen;
  ink.lineCap = fine.line === "main" ? "round" : "butt";
  if (ghost !== undefined) {
    strokeWhole(pen, fine, ghost, 1.2);
    return;
  }
  if (fine.line === "backup") {
    strokeWhole(pen, fine, pen.palette.softInk, 1);
    ink.setLineDash([9, 6]);
  }
  ink.lineWidth = fine.line === "main" ? MAIN_WIDTH : BACKUP_WIDTH;
  strokeByTension(pen, fine);
  ink.setLineDash([]);
}

function strokeWhole(pen: FlatPen, fine: FineLine, colour: string, width: number): void {
  const { ink } = pen;
  ink.strokeStyle = colour;
  ink.lineWidth = width;
  ink.beginPath();
  for (let i = 0; i < fine.count; i++) {
    const [x, y] = [pen.px(fine.nodes[3 * i]!), pen.py(fine.nodes[3 * i + 2]!)];
    if (i > 0 && !Number.isNaN(fine.tensions[i - 1]!)) ink.lineTo(x, y);
    else ink.moveTo(x, y);
  }
  ink.stroke();
}

/** Runs of pieces of about one tension share one stroke. */
function strokeByTension(pen: FlatPen, fine: FineLine): void {
  const { ink } = pen;
  let open = false;
  let shade = -1;
  let along = 0;
  for (let e = 0; e + 1 < fine.count; e++) {
    const tension = fine.tensions[e]!;
    const [x0, y0] = [pen.px(fine.nodes[3 * e]!), pen.py(fine.nodes[3 * e + 2]!)];
    const [x1, y1] = [pen.px(fine.nodes[3 * e + 3]!), pen.py(fine.nodes[3 * e + 5]!)];
    const next = Number.isNaN(tension) ? -1 : Math.round((40 * tension) / pen.scaleEnd);
    if (next !== shade && open) {
      ink.stroke();
      open = false;
    }
    if (next >= 0 && !open) {
      ink.strokeStyle = tensionCss(pen.table, next / 40);
      ink.lineDashOffset = along;
      ink.beginPath();
      ink.moveTo(x0, y0);
      open = true;
    }
    if (next >= 0) ink.lineTo(x1, y1);
    along += Math.hypot(x1 - x0, y1 - y0);
    shade = next;
  }
  if (open) ink.stroke();
  ink.lineDashOffset = 0;
}

export function drawLeash(pen: FlatPen, live: LiveFrame): void {
  const { ink } = pen;
  hangRope(
    rope,
    ROPE_POINTS,
    live.positions,
    live.ring,
    live.positions,
    live.walker,
    live.recording.problem.leash.length,
  );
  ink.lineCap = "round";
  ink.beginPath();
  for (let i = 0; i < ROPE_POINTS; i++) ink.lineTo(pen.px(rope[3 * i]!), pen.py(rope[3 * i + 2]!));
  ink.strokeStyle = tensionCss(pen.table, live.forces.leash / pen.scaleEnd);
  ink.lineWidth = 2.6;
  ink.stroke();
  dot(pen, rope[3 * 2]!, rope[3 * 2 + 2]!, 3.2, pen.palette.softInk);
  dot(pen, rope[3 * (ROPE_POINTS - 3)]!, rope[3 * (ROPE_POINTS - 3) + 2]!, 3.2, pen.palette.softInk);
  ink.beginPath();
  ink.arc(
    pen.px(live.positions[live.ring]!),
    pen.py(live.positions[live.ring + 2]!),
    Math.max(0.05 * pen.scale, 5),
    0,
    2 * Math.PI,
  );
  ink.strokeStyle = pen.palette.ink;
  ink.lineWidth = 2;
  ink.stroke();
}

export function drawAnchor(pen: FlatPen, shape: AnchorShape): void {
  const { ink } = pen;
  for (let i = 0; i < shape.kinds.length; i++) {
    ink.strokeStyle = pen.palette.softInk;
    ink.lineWidth = 2;
    ink.beginPath();
    ink.moveTo(pen.px(shape.master[0]!), pen.py(shape.master[2]!));
    ink.lineTo(pen.px(shape.rock[3 * i]!), pen.py(shape.rock[3 * i + 2]!));
    ink.stroke();
    dot(pen, shape.rock[3 * i]!, shape.rock[3 * i + 2]!, 3.5, pen.palette.ink);
  }
  dot(pen, shape.master[0]!, shape.master[2]!, 4.5, pen.palette.ink);
}

export function drawCuff(pen: FlatPen, x: number, z: number, tape: boolean): void {
  dot(pen, x, z, tape ? 2.5 : 4.5, tape ? pen.palette.softInk : pen.palette.ink);
}

function dot(pen: FlatPen, x: number, z: number, radius: number, colour: string): void {
  const { ink } = pen;
  ink.fillStyle = colour;
  ink.strokeStyle = pen.palette.paper;
  ink.lineWidth = 1.2;
  ink.beginPath();
  ink.arc(pen.px(x), pen.py(z), radius, 0, 2 * Math.PI);
  ink.fill();
  ink.stroke();
}
