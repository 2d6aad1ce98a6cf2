/**
 * Static equilibrium of the whole rig: the minimum of its potential energy over all free points, by Newton's method on the
 * banded Hessian with a Levenberg shift and a line search (Nocedal & Wright, Numerical Optimization, ch. 3 and 6).
 * All branches are relaxed (q = 0, T = T_eq). The ring slides freely on the backup and is held on the main line.
 */
import { settleContact } from "./contactGap.ts";
import type { StaticsProblem, StaticsResult } from "./staticsProblem.ts";
import { assemble, layOut, potential, type System, worstResidual } from "./system.ts";

/** Unbalanced force that counts as balanced, as a share of the largest tension [-]. */
const BALANCED_FORCE_SHARE = 1e-6;
const MOST_ITERATIONS = 400;
/** Full Newton steps are taken below this unbalanced force, as a share of the largest tension [-]; and how many at most. */
const POLISH_FORCE_SHARE = 1e-5;
const MOST_POLISH_STEPS = 30;

/** Moves `problem.positions` to equilibrium. */
export function findEquilibrium(problem: StaticsProblem, balanced = BALANCED_FORCE_SHARE): StaticsResult {
  const system = layOut(problem);
  const direction = new Float64Array(system.count);
  const downhill = new Float64Array(system.count);
  const start = new Float64Array(problem.positions.length);
  let shift = 0;
  let polished = 0;
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
    // Close to balance rounding in the energy misleads the line search, and a full Newton step is right.
    if (shift === 0 && result.residual < POLISH_FORCE_SHARE * largest && polished++ < MOST_POLISH_STEPS) {
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
