/**
 * Static equilibrium of the whole rig: the minimum of its potential energy over all free points, by Newton's method on the
 * banded Hessian with a Levenberg shift and a line search (Nocedal & Wright, Numerical Optimization, ch. 3 and 6).
 * All branches are relaxed (q = 0, T = T_eq). The ring slides freely on the backup and is held on the main line.
 */
import { BandMatrix } from "../bandMatrix.ts";
import { makeWeights, weighLine } from "../lineWeights.ts";
import { energyAt, slopeAt, type TensionCurve, tensionAt } from "../tensionCurve.ts";

/** A tension-only element between two points. */
export interface Strut {
  readonly p: number;
  readonly q: number;
  readonly length: number;
  readonly curve: TensionCurve;
}
/** Holds a point to where it is given, along one direction [N/m]. */
export interface Spring {
  readonly point: number;
  readonly at: readonly [number, number, number];
  readonly direction: readonly [number, number, number];
  readonly stiffness: number;
}
/** The ring against a line: no force within the clearance, a stiff spring beyond. */
export interface Contact {
  readonly ring: number;
  /** Point of each of the line's nodes. */
  readonly points: readonly number[];
  xi: number;
  readonly slides: boolean;
  readonly clearance: number;
  readonly stiffness: number;
}
/** Points in an order that keeps coupled ones close. A fixed point keeps the position it starts with. */
export interface StaticsProblem {
  readonly positions: Float64Array;
  readonly fixed: readonly boolean[];
  /** Weight of every point, downward [N]. */
  readonly loads: Float64Array;
  readonly struts: readonly Strut[];
  readonly springs: readonly Spring[];
  readonly contacts: readonly Contact[];
}
export interface StaticsResult {
  readonly ok: boolean;
  readonly iterations: number;
  /** Largest unbalanced force [N], and the point that has it. */
  readonly residual: number;
  readonly worst: number;
}

/** Unbalanced force that counts as balanced, as a share of the largest tension [-]. */
export const BALANCED = 1e-6;
const MOST_ITERATIONS = 400;
/** Unbalanced force from which on full Newton steps are taken, as a share of the largest tension [-], and the most of them. */
const POLISHED = 1e-5;
const MOST_POLISH = 30;

/** A problem's numbers laid out for the iterations. */
interface System {
  /** First of a point's three unknowns; −1: fixed. */
  readonly freedom: Int32Array;
  readonly count: number;
  readonly gradient: Float64Array;
  /** Two points, and natural length, of every strut. */
  readonly ends: Int32Array;
  readonly lengths: Float64Array;
  matrix: BandMatrix;
}

/** Moves `problem.positions` to equilibrium. */
export function findEquilibrium(problem: StaticsProblem, balanced = BALANCED): StaticsResult {
  const system = layOut(problem);
  const direction = new Float64Array(system.count);
  const downhill = new Float64Array(system.count);
  const start = new Float64Array(problem.positions.length);
  let shift = 0;
  let polished = 0;
  const sliding = problem.contacts.some(({ slides }) => slides);
  let result = { ok: false, iterations: 0, residual: Number.POSITIVE_INFINITY, worst: 0 };
  for (const contact of problem.contacts) settleContact(problem, contact);
  let energy = potential(problem, system);
  for (let iteration = 0; iteration < MOST_ITERATIONS; iteration++) {
    const largest = assemble(problem, system);
    result = { ...worstResidual(system, problem), iterations: iteration, ok: false };
    if (result.residual <= Math.max(balanced * largest, 1e-5)) return { ...result, ok: true };
    for (let i = 0; i < system.count; i++) downhill[i] = -system.gradient[i]!;
    let raised = 0;
    while (!system.matrix.solve(downhill, shift, direction)) {
      shift = Math.max(4 * shift, 1e-3);
      if (++raised > 60) return result;
    }
    // Close to balance rounding in the energy misleads the line search, and a full Newton step is right, unless a ring slides.
    if (shift === 0 && !sliding && result.residual < POLISHED * largest && polished++ < MOST_POLISH) {
      move(problem, system, direction, 1);
      for (const contact of problem.contacts) settleContact(problem, contact);
      energy = potential(problem, system);
      continue;
    }
    const found = lineSearch(problem, system, direction, energy, start);
    energy = found.energy;
    if (found.share === 0) {
      // Rounding in the energy hides the last steps; close to balance a full Newton step is still right.
      if (result.residual < 1e-5 * largest) {
        move(problem, system, direction, 1);
        for (const contact of problem.contacts) settleContact(problem, contact);
        energy = potential(problem, system);
      }
      shift = Math.max(8 * shift, 1e-2);
      if (shift > 1e9) return result;
    } else if (found.share < 0.2) shift = Math.max(10 * shift, 1);
    else if (found.share === 1) shift = shift < 1e-2 ? 0 : shift / 10;
  }
  return result;
}

function layOut(problem: StaticsProblem): System {
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

const weights = makeWeights();
/** Ring and the line points it touches. */
function contactMembers(contact: Contact): number[] {
  weighContact(contact);
  return [contact.ring, 0, 1, 2].map((k, i) => (i === 0 ? contact.ring : contact.points[weights.node + k]!));
}

function weighContact(contact: Contact): void {
  weighLine(contact.xi, 0, contact.points.length - 1, weights);
}

const gap = new Float64Array(3);
/** Ring minus line point; returns the distance. */
function measureGap({ positions }: StaticsProblem, contact: Contact): number {
  weighContact(contact);
  for (let c = 0; c < 3; c++) {
    let point = 0;
    for (let k = 0; k < 3; k++) point += weights.w[k]! * positions[3 * contact.points[weights.node + k]! + c]!;
    gap[c] = positions[3 * contact.ring + c]! - point;
  }
  return Math.sqrt(gap[0]! ** 2 + gap[1]! ** 2 + gap[2]! ** 2);
}

/** Slides the contact to the point of the line nearest to the ring. */
function settleContact(problem: StaticsProblem, contact: Contact): void {
  if (!contact.slides) return;
  const { positions } = problem;
  for (let i = 0; i < 20; i++) {
    measureGap(problem, contact);
    let along = 0;
    let square = 0;
    for (let c = 0; c < 3; c++) {
      let tangent = 0;
      for (let k = 0; k < 3; k++) tangent += weights.d[k]! * positions[3 * contact.points[weights.node + k]! + c]!;
      along += gap[c]! * tangent;
      square += tangent * tangent;
    }
    const slide = Math.min(Math.max(along / square, -0.5), 0.5);
    contact.xi = Math.min(Math.max(contact.xi + slide, 1), contact.points.length - 2);
    if (Math.abs(slide) < 1e-12) return;
  }
}

function potential(problem: StaticsProblem, { ends, lengths }: System): number {
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
  for (const spring of problem.springs) energy += 0.5 * spring.stiffness * offset(spring, x) ** 2;
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
function assemble(problem: StaticsProblem, system: System): number {
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
    const factors = [1, -weights.w[0]!, -weights.w[1]!, -weights.w[2]!];
    const normal = [gap[0]! / distance, gap[1]! / distance, gap[2]! / distance];
    const force = contact.stiffness * beyond;
    // Where the ring slides, only the normal is stiff: sliding takes the rest up.
    addPair(system, members, factors, normal, force, contact.stiffness, contact.slides ? 0 : force / distance);
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

function worstResidual({ freedom, gradient }: System, problem: StaticsProblem): { residual: number; worst: number } {
  let residual = 0;
  let worst = 0;
  for (let p = 0; p < problem.fixed.length; p++) {
    const at = freedom[p]!;
    if (at < 0) continue;
    const size = Math.sqrt(gradient[at]! ** 2 + gradient[at + 1]! ** 2 + gradient[at + 2]! ** 2);
    if (size > residual) {
      residual = size;
      worst = p;
    }
  }
  return { residual, worst };
}

function move({ positions }: StaticsProblem, { freedom }: System, direction: Float64Array, share: number): void {
  for (let p = 0; p < freedom.length; p++) {
    const at = freedom[p]!;
    if (at < 0) continue;
    for (let c = 0; c < 3; c++) positions[3 * p + c] = positions[3 * p + c]! + share * direction[at + c]!;
  }
}

/**
 * Halves the step until the energy falls as it should (Armijo); leaves the points there. Returns the share, 0 for none, and
 * the energy there. `start` is room for the positions.
 */
function lineSearch(
  problem: StaticsProblem,
  system: System,
  direction: Float64Array,
  energy: number,
  start: Float64Array,
): { share: number; energy: number } {
  let slope = 0;
  for (let i = 0; i < system.count; i++) slope += system.gradient[i]! * direction[i]!;
  start.set(problem.positions);
  const places = problem.contacts.map(({ xi }) => xi);
  for (let share = 1; share > 1e-6; share /= 2) {
    move(problem, system, direction, share);
    for (const contact of problem.contacts) settleContact(problem, contact);
    const now = potential(problem, system);
    if (now <= energy + 1e-4 * share * slope) return { share, energy: now };
    problem.positions.set(start);
    for (const [k, contact] of problem.contacts.entries()) contact.xi = places[k]!;
  }
  return { share: 0, energy };
}
