/**
 * The drawn line: a smooth curve (Catmull and Rom 1974) through the computed nodes, finer than the mesh. It goes through the
 * ring if the ring is on the line. The mesh joins the ring smoothly over several nodes, but a ring drawn beside its line would
 * only puzzle.
 */
import type { LiveFrame } from "../liveFrame.ts";

export interface FineLine {
  readonly line: "main" | "backup";
  /** Pieces per computed element. */
  readonly pieces: number;
  readonly count: number;
  /** xyz each [m] */
  readonly nodes: Float32Array;
  /** One per piece [N]; NaN: parted. */
  readonly tensions: Float32Array;
  /** Fractions of natural length [-]. */
  readonly fractions: Float32Array;
}

/** Longest piece of a drawn line [m]. */
const LONGEST_PIECE = 0.35;
/** A line is not drawn through a ring that is farther away than this: the ring is not really on it [m]. */
const FARTHEST_RING = 0.8;

export function createFineLine(live: LiveFrame, line: "main" | "backup"): FineLine {
  const { frames, problem } = live.recording;
  const given = line === "main" ? frames.mainNodes : frames.backupNodes;
  const first = line === "main" ? 0 : frames.mainNodes;
  const elements = Math.max(given - 1, 0);
  const pieces = Math.min(Math.max(Math.round(problem.span / Math.max(elements, 1) / LONGEST_PIECE), 1), 8);
  const count = elements * pieces + 1;
  const fractions = new Float32Array(count);
  for (let k = 0; k < count; k++) {
    const e = Math.min(Math.floor(k / pieces), elements - 1);
    const s = (k - e * pieces) / pieces;
    const from = frames.fractions[first + e]!;
    fractions[k] = from + s * (frames.fractions[first + e + 1]! - from);
  }
  return { line, pieces, count, nodes: new Float32Array(count * 3), tensions: new Float32Array(count - 1), fractions };
}

export function fillFineLine(fine: FineLine, live: LiveFrame): void {
  const { pieces, nodes, tensions } = fine;
  const main = fine.line === "main";
  const first = main ? 0 : live.mainNodes;
  const elements = (main ? live.mainNodes : live.backupNodes) - 1;
  const firstElement = main ? 0 : live.mainNodes - 1;
  for (let e = 0; e < elements; e++) {
    const tension = live.tensions[firstElement + e]!;
    const a = first + e;
    // Across a parted element there is no curve to continue.
    const before = e > 0 && !Number.isNaN(live.tensions[firstElement + e - 1]!) ? a - 1 : a;
    const after = e + 1 < elements && !Number.isNaN(live.tensions[firstElement + e + 1]!) ? a + 2 : a + 1;
    for (let k = 0; k < pieces; k++) {
      const at = e * pieces + k;
      tensions[at] = tension;
      curvePoint(live.positions, before, a, a + 1, after, k / pieces, nodes, at);
    }
  }
  const last = fine.count - 1;
  for (let c = 0; c < 3; c++) nodes[3 * last + c] = live.positions[3 * (first + elements) + c]!;
  drawThroughRing(fine, live, main ? live.ringAt[0]! : live.ringAt[1]!);
}

function curvePoint(
  p: Float32Array,
  i: number,
  j: number,
  k: number,
  l: number,
  s: number,
  out: Float32Array,
  at: number,
): void {
  const s2 = s * s;
  const s3 = s2 * s;
  for (let c = 0; c < 3; c++) {
    const p1 = p[3 * j + c]!;
    const p2 = p[3 * k + c]!;
    // At an end the missing neighbour is mirrored, so that the curve leaves straight.
    const p0 = i === j ? 2 * p1 - p2 : p[3 * i + c]!;
    const p3 = l === k ? 2 * p2 - p1 : p[3 * l + c]!;
    out[3 * at + c] =
      0.5 * (2 * p1 + (p2 - p0) * s + (2 * p0 - 5 * p1 + 4 * p2 - p3) * s2 + (3 * p1 - p0 - 3 * p2 + p3) * s3);
  }
}

function drawThroughRing(fine: FineLine, live: LiveFrame, at: number): void {
  if (at < 0 || fine.count < 2) return;
  const { nodes, fractions, count } = fine;
  let k = 0;
  while (k + 2 < count && fractions[k + 1]! <= at) k++;
  const s = (at - fractions[k]!) / (fractions[k + 1]! - fractions[k]! || 1);
  const reach = 1.6 * fine.pieces * (fractions[k + 1]! - fractions[k]!);
  const d0 = live.positions[live.ring]! - (nodes[3 * k]! + s * (nodes[3 * k + 3]! - nodes[3 * k]!));
  const d1 = live.positions[live.ring + 1]! - (nodes[3 * k + 1]! + s * (nodes[3 * k + 4]! - nodes[3 * k + 1]!));
  const d2 = live.positions[live.ring + 2]! - (nodes[3 * k + 2]! + s * (nodes[3 * k + 5]! - nodes[3 * k + 2]!));
  if (d0 * d0 + d1 * d1 + d2 * d2 > FARTHEST_RING * FARTHEST_RING) return;
  for (let i = 1; i + 1 < count; i++) {
    const away = Math.abs(fractions[i]! - at) / reach;
    if (away >= 1) continue;
    const weight = 1 - away * away * (3 - 2 * away);
    nodes[3 * i] = nodes[3 * i]! + weight * d0;
    nodes[3 * i + 1] = nodes[3 * i + 1]! + weight * d1;
    nodes[3 * i + 2] = nodes[3 * i + 2]! + weight * d2;
  }
}
