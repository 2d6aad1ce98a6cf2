/**
 * Lays the motion and the state of a line onto another mesh of the same line, between two steps. Positions are those of the old line
 * at the new nodes; every old node gives its momentum to the two new ones that it lies between; every branch of an element keeps its
 * force, in the mean over the old elements that it takes the place of. What the old mesh held and the new one cannot is lost.
 */
import { COLUMN, MOST_BRANCHES, RUN } from "../kernel/lineLayout.ts";
import { type Line, runIndexAt } from "./line.ts";
import { elementSpan, emptyElement, isEmpty } from "./lineState.ts";
import { tensionAt } from "./tensionCurve.ts";

/** A line and the kernel's memory in which it lies. */
export interface Laid {
  readonly line: Line;
  readonly memory: Float64Array;
}

/** A stretch of whole elements: its first and last node. */
interface Piece {
  readonly first: number;
  readonly last: number;
}

/** Whether two fractions of a line are one place, but for rounding. */
export const isSamePlace = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

/** False, and nothing is written, where an element has parted that the new mesh does not have. */
export function carryLine(from: Laid, to: Laid): boolean {
  const dead = partedElements(from);
  const same = dead.map((e) => sameElement(from.line, to.line, e));
  if (same.includes(undefined)) return false;
  const gone = same as number[];
  const before = piecesBetween(from.line, dead);
  const after = piecesBetween(to.line, gone);
  for (const [k, piece] of after.entries()) {
    carryNodes(from, before[k]!, to, piece);
    carryElements(from, before[k]!, to, piece);
  }
  for (const e of gone) emptyElement(to.line, to.memory, e);
  return true;
}

/** Elements that have parted, and the seam, which is no element. */
function partedElements({ line, memory }: Laid): readonly number[] {
  return Array.from({ length: line.elements }, (_, e) => e).filter((e) => isEmpty(line, memory, e));
}

function sameElement(from: Line, to: Line, e: number): number | undefined {
  const [low, high] = [from.fractions[e]!, from.fractions[e + 1]!];
  for (let i = 0; i < to.elements; i++) {
    if (isSamePlace(to.fractions[i]!, low) && isSamePlace(to.fractions[i + 1]!, high)) return i;
  }
  return undefined;
}

function piecesBetween({ nodes }: Line, gone: readonly number[]): readonly Piece[] {
  const firsts = [0, ...gone.map((e) => e + 1)];
  const lasts = [...gone, nodes - 1];
  return firsts.map((first, k) => ({ first, last: lasts[k]! }));
}

function carryNodes(from: Laid, old: Piece, to: Laid, piece: Piece): void {
  const [a, b] = [from.memory, to.memory];
  const { line } = from;
  const mass = new Float64Array(to.line.nodes);
  const momentum = new Float64Array(3 * to.line.nodes);
  let k = piece.first;
  for (let j = old.first; j <= old.last; j++) {
    const at = line.fractions[j]!;
    while (k < piece.last - 1 && to.line.fractions[k + 1]! <= at) k++;
    const share = shareBetween(to.line, k, piece.last, at);
    for (const [node, part] of [
      [k, 1 - share],
      [k + 1, share],
    ] as const) {
      if (part === 0) continue;
      mass[node] = mass[node]! + part * line.masses[j]!;
      for (let c = 0; c < 3; c++) {
        const v = a[line.base + (COLUMN.VX + c) * line.pitch + j]!;
        momentum[3 * node + c] = momentum[3 * node + c]! + part * line.masses[j]! * v;
      }
    }
  }
  let j = old.first;
  for (let i = piece.first; i <= piece.last; i++) {
    const at = to.line.fractions[i]!;
    while (j < old.last - 1 && line.fractions[j + 1]! <= at) j++;
    const share = shareBetween(line, j, old.last, at);
    const between = (column: number): number => {
      const x = line.base + column * line.pitch + j;
      return share === 0 ? a[x]! : a[x]! + share * (a[x + 1]! - a[x]!);
    };
    for (let c = 0; c < 3; c++) {
      const V = COLUMN.VX + c;
      b[to.line.base + c * to.line.pitch + i] = between(c);
      b[to.line.base + V * to.line.pitch + i] = mass[i]! > 0 ? momentum[3 * i + c]! / mass[i]! : between(V);
    }
  }
}

/** How far a place lies on the way from a node to the next one of its piece, 0 to 1. */
function shareBetween({ fractions }: Line, node: number, last: number, at: number): number {
  if (node >= last) return 0;
  const [low, high] = [fractions[node]!, fractions[node + 1]!];
  return high > low ? Math.min(Math.max((at - low) / (high - low), 0), 1) : 0;
}

function carryElements(from: Laid, old: Piece, to: Laid, piece: Piece): void {
  const b = to.memory;
  const held = branchForces(from, old);
  const { line } = to;
  const sum = new Float64Array(MOST_BRANCHES);
  let first = old.first;
  for (let e = piece.first; e < piece.last; e++) {
    const [low, high] = [line.fractions[e]!, line.fractions[e + 1]!];
    const run = runIndexAt(line, e);
    const { material, curve } = line.runs[run]!;
    const at = line.runsAt + run * line.runPitch;
    sum.fill(0);
    while (first < old.last - 1 && from.line.fractions[first + 1]! <= low) first++;
    for (let o = first; o < old.last && from.line.fractions[o]! < high; o++) {
      const common = Math.min(high, from.line.fractions[o + 1]!) - Math.max(low, from.line.fractions[o]!);
      if (common <= 0) continue;
      for (let k = 0; k < material.branches.length; k++) {
        sum[k] = sum[k]! + (common / (high - low)) * held[MOST_BRANCHES * (o - old.first) + k]!;
      }
    }
    const strain = elementSpan(line, b, e) * b[line.base + COLUMN.IL * line.pitch + e]! - 1;
    let tension = strain > 0 ? tensionAt(curve, strain) : 0;
    for (let k = 0; k < material.branches.length; k++) {
      tension += strain > 0 ? sum[k]! : 0;
      b[line.base + (COLUMN.R + k) * line.pitch + e] = strain > 0 ? sum[k]! - b[at + RUN.stiffness + k]! * strain : 0;
    }
    b[line.base + COLUMN.E * line.pitch + e] = strain;
    b[line.base + COLUMN.T * line.pitch + e] = Math.max(tension, 0);
  }
}

/** Force of every branch of every element of a piece, at the positions in memory [N]; none in slack ones. */
function branchForces({ line, memory: m }: Laid, { first, last }: Piece): Float64Array {
  const forces = new Float64Array(MOST_BRANCHES * (last - first));
  for (let e = first; e < last; e++) {
    const strain = elementSpan(line, m, e) * m[line.base + COLUMN.IL * line.pitch + e]! - 1;
    if (strain <= 0) continue;
    const run = runIndexAt(line, e);
    const at = line.runsAt + run * line.runPitch;
    for (let k = 0; k < line.runs[run]!.material.branches.length; k++) {
      const r = m[line.base + (COLUMN.R + k) * line.pitch + e]!;
      forces[MOST_BRANCHES * (e - first) + k] = r + m[at + RUN.stiffness + k]! * strain;
    }
  }
  return forces;
}
