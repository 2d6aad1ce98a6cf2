/** The elevation's window on the plane of the line: x to the right, z up. */
import type { Recording } from "@secondline/engine";
import type { Gap } from "../shape/gap.ts";
import { comesDownLeft, eventPoints, LEGEND_FOOT } from "../shape/viewPoints.ts";

export interface FlatView {
  /** Centre of the picture [m]. */
  x: number;
  z: number;
  /** [px/m] */
  scale: number;
}

/** Height of the tools and legend that cover the picture's upper and lower edge [px]. */
export interface Covered {
  readonly top: number;
  readonly bottom: number;
}
const NO_COVER: Covered = { top: 0, bottom: 0 };
/** Room that a large picture keeps free above and below [px]. */
const WIDE_EDGE = 60;
/** Room that a small picture keeps free above and below its content, besides the covered edges [px]. */
const NARROW_EDGE = 24;

/** Content of a picture: the event, the whole rig with as much ground as has room, or the whole rig with all ground. */
export type FlatScope = "event" | "rig" | "ground";

/** The window that holds this content inside the picture. */
export function fitFlat(
  view: FlatView,
  recording: Recording,
  gap: Gap,
  scope: FlatScope,
  width: number,
  height: number,
  covered: Covered = NO_COVER,
): void {
  const wholeRig = scope !== "event";
  const bounds = wholeRig ? rigBounds(recording, gap) : eventBounds(recording);
  const narrow = width < 560;
  const foot =
    !narrow && !wholeRig && comesDownLeft(eventPoints(recording)) ? Math.min(LEGEND_FOOT, 0.4 * height) : WIDE_EDGE;
  const side = narrow ? 14 : 48;
  const right = wholeRig ? side : narrow ? 96 : 150;
  const free = Math.max(width - side - right, 50);
  const upright = Math.max(height - (narrow ? covered.top + covered.bottom + 2 * NARROW_EDGE : WIDE_EDGE + foot), 50);
  const wide = free / (bounds.right - bounds.left);
  // A deep gap may run out of the picture below; the line and the fall may not.
  const least = scope === "ground" ? bounds.bottom : bounds.least;
  view.scale = Math.min(wide, upright / (bounds.top - least));
  view.x = 0.5 * (bounds.left + bounds.right) + (right - side) / (2 * view.scale);
  const low = Math.max(bounds.bottom, bounds.top - upright / view.scale);
  view.z =
    0.5 * (bounds.top + low) +
    (narrow ? 0.5 * (covered.top - covered.bottom) : 0.5 * (WIDE_EDGE - foot) - 14) / view.scale;
}

/** Zooms about a point of the picture [px], which keeps its place. */
export function zoomFlat(view: FlatView, factor: number, px: number, py: number, width: number, height: number): void {
  const next = Math.min(Math.max(view.scale * factor, 1), 600);
  view.x += (px - width / 2) * (1 / view.scale - 1 / next);
  view.z -= (py - height / 2) * (1 / view.scale - 1 / next);
  view.scale = next;
}

export function panFlat(view: FlatView, dx: number, dy: number): void {
  view.x -= dx / view.scale;
  view.z += dy / view.scale;
}

interface Bounds {
  readonly left: number;
  readonly right: number;
  /** Lowest point wanted, and the lowest that must be seen [m]. */
  readonly bottom: number;
  readonly least: number;
  readonly top: number;
}

function eventBounds(recording: Recording): Bounds {
  const points = eventPoints(recording);
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < points.length; i += 3) {
    left = Math.min(left, points[i]!);
    right = Math.max(right, points[i]!);
    bottom = Math.min(bottom, points[i + 2]!);
    top = Math.max(top, points[i + 2]!);
  }
  return { left, right, bottom, least: bottom, top };
}

function rigBounds(recording: Recording, gap: Gap): Bounds {
  const event = eventBounds(recording);
  return {
    left: -4,
    right: gap.span + 4,
    bottom: Math.min(event.bottom, gap.floor - 1),
    least: event.bottom - 3,
    top: Math.max(event.top, gap.rise, 0) + 1,
  };
}

export const isSameView = (a: FlatView, b: FlatView): boolean => a.x === b.x && a.z === b.z && a.scale === b.scale;

/** How far tools and legend cover a picture of that height from its upper and its lower edge [px]. */
export function coveredEdges(
  boxes: readonly { readonly top: number; readonly bottom: number }[],
  height: number,
): Covered {
  let [top, bottom] = [0, 0];
  for (const box of boxes) {
    if (box.bottom < height / 2) top = Math.max(top, box.bottom);
    else bottom = Math.max(bottom, height - box.top);
  }
  return { top, bottom };
}
