/** The potential energy of a statics problem, and its first and second derivatives over all free points. */

import { energyAt, slopeAt, tensionAt } from "../line/tensionCurve.ts";
import { hypot } from "../portable/index.ts";
import { BandMatrix } from "./bandMatrix.ts";
import { contactMembers, gap, measureGap, weights } from "./contactGap.ts";
import { slideOf } from "./sliding.ts";
import type { Spring, StaticsProblem } from "./staticsProblem.ts";

/** A problem's numbers laid out for the iterations. */
export interface System {
  /** First of a point's three unknowns; −1: fixed. */
  readonly freedom: Int32Array;
  readonly count: number;
  readonly gradient: Float64Array;
  /** Two points, and natural length, of every strut. */
  readonly ends: Int32Array;
  readonly lengths: Float64Array;
  matrix: BandMatrix;
}

export function layOut(problem: StaticsProblem): System {
  const { struts, fixed } = problem;
  const freedom = new Int32Array(fixed.length).fill(-1);
  let count = 0;
  for (let p = 0; p < fixed.length; p++) {
    if (fixed[p]) continue;
    freedom[p] = count;
    count += 3;
  }
  const ends = new Int32Array(2 * struts.length);
  const lengths = new Float64Array(struts.length);
  for (let k = 0; k < struts.length; k++) {
    const { p, q, length } = struts[k]!;
    ends[2 * k] = p;
    ends[2 * k + 1] = q;
    lengths[k] = length;
  }
  const matrix = new BandMatrix(count, bandOf(problem, freedom));
  return { freedom, count, gradient: new Float64Array(count), ends, lengths, matrix };
}

function bandOf(problem: StaticsProblem, freedom: Int32Array): number {
  let band = 2;
  const couple = (p: number, q: number) => {
    if (freedom[p]! >= 0 && freedom[q]! >= 0) band = Math.max(band, Math.abs(freedom[p]! - freedom[q]!) + 2);
  };
  for (const { p, q } of problem.struts) couple(p, q);
  for (const contact of problem.contacts) {
    const members = contactMembers(contact);
    for (const p of members) for (const q of members) couple(p, q);
  }
  return band;
}

/** Potential energy [J]. */
export function potential(problem: StaticsProblem, { ends, lengths }: System): number {
  const { positions: x, struts, loads } = problem;
  let energy = 0;
  for (let p = 0; p < loads.length; p++) energy += loads[p]! * x[3 * p + 2]!;
  for (let k = 0; k < lengths.length; k++) {
    const p = 3 * ends[2 * k]!;
    const q = 3 * ends[2 * k + 1]!;
    const dx = x[q]! - x[p]!;
    const dy = x[q + 1]! - x[p + 1]!;
    const dz = x[q + 2]! - x[p + 2]!;
    const length = lengths[k]!;
    const strain = Math.sqrt(dx * dx + dy * dy + dz * dz) / length - 1;
    if (strain > 0) energy += length * energyAt(struts[k]!.curve, strain);
  }
  for (const spring of problem.springs) {
    const off = offset(spring, x);
    energy += 0.5 * spring.stiffness * off * off;
  }
  for (const contact of problem.contacts) {
    const beyond = measureGap(problem, contact) - contact.clearance;
    if (beyond > 0) energy += 0.5 * contact.stiffness * beyond * beyond;
  }
  return energy;
}

const offset = ({ point, at, direction }: Spring, x: Float64Array): number =>
  (x[3 * point]! - at[0]) * direction[0] +
  (x[3 * point + 1]! - at[1]) * direction[1] +
  (x[3 * point + 2]! - at[2]) * direction[2];

/** Gradient and Hessian into `system`; returns the largest tension anywhere. */
export function assemble(problem: StaticsProblem, system: System): number {
  const { positions: x } = problem;
  const { gradient, freedom } = system;
  const band = bandOf(problem, freedom);
  if (band > system.matrix.band) system.matrix = new BandMatrix(system.count, band);
  else system.matrix.clear();
  gradient.fill(0);
  for (let p = 0; p < freedom.length; p++) {
    if (freedom[p]! >= 0) gradient[freedom[p]! + 2] = problem.loads[p]!;
  }
  const largest = addStruts(problem, system);
  for (const spring of problem.springs) {
    addPair(system, [spring.point], [1], spring.direction, spring.stiffness * offset(spring, x), spring.stiffness, 0);
  }
  for (const contact of problem.contacts) {
    const distance = measureGap(problem, contact);
    const beyond = distance - contact.clearance;
    if (beyond <= 0) continue;
    const members = contactMembers(contact);
    const factors = members.map((_, k) => (k === 0 ? 1 : -weights.w[k - 1]!));
    const normal = [gap[0]! / distance, gap[1]! / distance, gap[2]! / distance];
    const force = contact.stiffness * beyond;
    addPair(system, members, factors, normal, force, contact.stiffness, force / distance);
    const slide = slideOf(problem, contact, { force, distance });
    if (slide) addYielding(system, members, slide.pull, slide.softening);
  }
  return largest;
}

/** Gradient and Hessian of all struts; returns the largest tension. A slack strut adds nothing. */
function addStruts({ positions: x, struts }: StaticsProblem, system: System): number {
  const { gradient, freedom, ends, lengths, matrix } = system;
  let largest = 1;
  for (let k = 0; k < lengths.length; k++) {
    const p = ends[2 * k]!;
    const q = ends[2 * k + 1]!;
    const dx = x[3 * q]! - x[3 * p]!;
    const dy = x[3 * q + 1]! - x[3 * p + 1]!;
    const dz = x[3 * q + 2]! - x[3 * p + 2]!;
    const now = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const strain = now / lengths[k]! - 1;
    if (strain < 0 || now === 0) continue;
    const { curve } = struts[k]!;
    const tension = tensionAt(curve, strain);
    if (tension > largest) largest = tension;
    const across = tension / now;
    const more = (slopeAt(curve, strain) / lengths[k]! - across) / (now * now);
    const fp = freedom[p]!;
    const fq = freedom[q]!;
    if (fp >= 0) {
      addForce(gradient, fp, -across, dx, dy, dz);
      addBlock(matrix, fp, fp, more, across, dx, dy, dz);
    }
    if (fq >= 0) {
      addForce(gradient, fq, across, dx, dy, dz);
      addBlock(matrix, fq, fq, more, across, dx, dy, dz);
    }
    if (fp >= 0 && fq >= 0) addBlock(matrix, Math.max(fp, fq), Math.min(fp, fq), -more, -across, dx, dy, dz);
  }
  return largest;
}

function addForce(gradient: Float64Array, at: number, scale: number, dx: number, dy: number, dz: number): void {
  gradient[at] = gradient[at]! + scale * dx;
  gradient[at + 1] = gradient[at + 1]! + scale * dy;
  gradient[at + 2] = gradient[at + 2]! + scale * dz;
}

/** Adds more·d·dᵀ + across·I to the block at (row, column); of a block on the diagonal, its lower half. */
function addBlock(
  matrix: BandMatrix,
  row: number,
  column: number,
  more: number,
  across: number,
  dx: number,
  dy: number,
  dz: number,
): void {
  matrix.add(row, column, more * dx * dx + across);
  matrix.add(row + 1, column, more * dx * dy);
  matrix.add(row + 1, column + 1, more * dy * dy + across);
  matrix.add(row + 2, column, more * dx * dz);
  matrix.add(row + 2, column + 1, more * dy * dz);
  matrix.add(row + 2, column + 2, more * dz * dz + across);
  if (row === column) return;
  matrix.add(row, column + 1, more * dx * dy);
  matrix.add(row, column + 2, more * dx * dz);
  matrix.add(row + 1, column + 2, more * dy * dz);
}

/** Adds a force along `n` on points with factors, stiff along n by `along` and across it by `across` [N/m]. */
function addPair(
  { freedom, gradient, matrix }: System,
  points: readonly number[],
  factors: readonly number[],
  n: readonly number[],
  force: number,
  along: number,
  across: number,
): void {
  for (let a = 0; a < points.length; a++) {
    const row = freedom[points[a]!]!;
    if (row < 0 || factors[a] === 0) continue;
    for (let c = 0; c < 3; c++) gradient[row + c] = gradient[row + c]! + factors[a]! * force * n[c]!;
    for (let b = 0; b < points.length; b++) {
      const column = freedom[points[b]!]!;
      if (column < 0 || column > row || factors[b] === 0) continue;
      const factor = factors[a]! * factors[b]!;
      for (let c = 0; c < 3; c++) {
        for (let d = 0; d < 3; d++) {
          if (column + d > row + c) continue;
          matrix.add(row + c, column + d, factor * ((along - across) * n[c]! * n[d]! + (c === d ? across : 0)));
        }
      }
    }
  }
}

/** Adds softening·v·vᵀ over the axes of some points, v in their order; the gradient stays. */
function addYielding({ freedom, matrix }: System, points: readonly number[], v: Float64Array, softening: number): void {
  for (let a = 0; a < points.length; a++) {
    const row = freedom[points[a]!]!;
    if (row < 0) continue;
    for (let b = 0; b < points.length; b++) {
      const column = freedom[points[b]!]!;
      if (column < 0 || column > row) continue;
      for (let c = 0; c < 3; c++) {
        for (let d = 0; d < 3 && column + d <= row + c; d++) {
          matrix.add(row + c, column + d, softening * v[3 * a + c]! * v[3 * b + d]!);
        }
      }
    }
  }
}

/** Largest force that the gradient leaves on any point [N], and which point. */
export function worstResidual(
  { freedom, gradient }: System,
  problem: StaticsProblem,
): { residual: number; worst: number } {
  let residual = 0;
  let worst = 0;
  for (let p = 0; p < problem.fixed.length; p++) {
    const at = freedom[p]!;
    if (at < 0) continue;
    const size = hypot(gradient[at]!, gradient[at + 1]!, gradient[at + 2]!);
    if (size > residual) {
      residual = size;
      worst = p;
    }
  }
  return { residual, worst };
}
