/** A line's state in the kernel's memory: writes the line at rest, reads it element by element, and takes an element out. */

import { COLUMN, MOST_BRANCHES, RUN } from "../kernel/lineLayout.ts";
import { type Line, runIndexAt } from "./line.ts";
import { elementEnergy } from "./lineEnergy.ts";
import { tensionAt } from "./tensionCurve.ts";

/** Places a line's nodes [m, xyz of every node], at rest and with its branches relaxed: q = 0, so r = −B·ε. */
export function placeAtRest(line: Line, m: Float64Array, positions: Float64Array): void {
  const { base, pitch } = line;
  for (let i = 0; i < line.nodes; i++) {
    for (let c = 0; c < 3; c++) m[base + c * pitch + i] = positions[3 * i + c]!;
  }
  for (const [k, run] of line.runs.entries()) {
    const at = line.runsAt + k * line.runPitch;
    for (let e = run.first; e < run.last; e++) {
      const now = elementSpan(line, m, e) * m[base + COLUMN.IL * pitch + e]! - 1;
      const strain = Math.max(0, now);
      m[base + COLUMN.E * pitch + e] = now;
      m[base + COLUMN.T * pitch + e] = tensionAt(run.curve, strain);
      for (let b = 0; b < run.material.branches.length; b++) {
        m[base + (COLUMN.R + b) * pitch + e] = -m[at + RUN.stiffness + b]! * strain;
      }
    }
  }
}

/** Distance between an element's nodes [m]. */
export function elementSpan(line: Line, m: Float64Array, e: number): number {
  const x = line.base + e;
  const dx = m[x + 1]! - m[x]!;
  const dy = m[x + line.pitch + 1]! - m[x + line.pitch]!;
  const dz = m[x + 2 * line.pitch + 1]! - m[x + 2 * line.pitch]!;
  return Math.sqrt(dx * dx + dy * dy + dz * dz);
}

/** Position of a node [m]. */
export function nodePosition(line: Line, m: Float64Array, i: number): readonly [number, number, number] {
  return [m[line.base + i]!, m[line.base + line.pitch + i]!, m[line.base + 2 * line.pitch + i]!];
}

/**
 * Kills an element: slack for ever. The kernel has booked its work up to x(t) and moved the nodes on with its last tension, so
 * half of that step's work is still to be booked, into `out[0]`. Returns what the element held, which is gone [J].
 */
export function killElement(line: Line, m: Float64Array, e: number, out: Float64Array): number {
  const { base, pitch } = line;
  const held = elementEnergy(line, m, e, runIndexAt(line, e));
  const IL = base + COLUMN.IL * pitch + e;
  const strain = elementSpan(line, m, e) * m[IL]! - 1;
  out[0] = out[0]! + (0.5 * m[base + COLUMN.T * pitch + e]! * (strain - m[base + COLUMN.E * pitch + e]!)) / m[IL]!;
  emptyElement(line, m, e);
  return held;
}

/** Leaves an element without length, strength and pull, as one that has parted. */
export function emptyElement({ base, pitch }: Line, m: Float64Array, e: number): void {
  m[base + COLUMN.IL * pitch + e] = 0;
  m[base + COLUMN.S * pitch + e] = Number.POSITIVE_INFINITY;
  m[base + COLUMN.T * pitch + e] = 0;
  m[base + COLUMN.E * pitch + e] = -1;
  for (let b = 0; b < MOST_BRANCHES; b++) m[base + (COLUMN.R + b) * pitch + e] = 0;
}

/** Whether an element has parted; true of a seam too, cut or not. */
export const isEmpty = ({ base, pitch }: Line, m: Float64Array, e: number): boolean =>
  m[base + COLUMN.IL * pitch + e] === 0;

/** Words for the first node of a line whose place is no longer a number; undefined when all are. */
export function lostNode(line: Line, m: Float64Array): string | undefined {
  for (let i = 0; i < line.nodes; i++) {
    if (!Number.isFinite(m[line.base + i]! + m[line.base + 2 * line.pitch + i]!)) {
      return `${line.name} line, node ${i} of ${line.nodes}`;
    }
  }
  return undefined;
}
