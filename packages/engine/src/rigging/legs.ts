/** Anchors with legs: how the legs share the main line's pretension at rest, and so their natural lengths. */

import { anchorOf, chordDirection } from "../line/model.ts";
import { hypot } from "../portable/index.ts";
import type { AnchorLeg, Problem } from "../problem.ts";

export interface LegRest {
  readonly leg: AnchorLeg;
  /** Rock point in the rig's frame [m]. */
  readonly rock: readonly [number, number, number];
  /** Natural length [m]. */
  readonly length: number;
  /** Tension at rest under the pretension alone [N]. */
  readonly tension: number;
}
export interface Legs {
  readonly A: readonly LegRest[];
  readonly B: readonly LegRest[];
}

/**
 * Legs of both anchors. The tensions are the least-squares ones that balance the pretension: minimum-norm where legs are
 * redundant. `unbalanced` is the force that is left [N]; a leg that would have to push has a negative tension.
 */
export function legsOf(problem: Problem): Legs {
  return { A: legsAt(problem, "A"), B: legsAt(problem, "B") };
}

function legsAt(problem: Problem, end: "A" | "B"): LegRest[] {
  const legs = anchorOf(problem, end).legs ?? [];
  if (legs.length === 0) return [];
  const pull = chordDirection(problem).map((c) => (end === "A" ? c : -c) * problem.main.pretension);
  const at = end === "A" ? [0, 0, 0] : [problem.span, 0, problem.rise];
  const units = legs.map(({ rock }) => rock.map((c) => c / hypot(...rock)));
  const tensions = minimumNorm(
    units,
    pull.map((c) => -c),
  );
  return legs.map((leg, k) => {
    const distance = hypot(...leg.rock);
    const tension = tensions[k]!;
    const rock = leg.rock.map((c, i) => c + at[i]!) as [number, number, number];
    return { leg, rock, length: distance - tension / leg.stiffness, tension };
  });
}

/** Least-norm t with Σ tᵢ·uᵢ = force, through (U·Uᵀ + tiny)⁻¹ in three dimensions. */
function minimumNorm(units: readonly (readonly number[])[], force: readonly number[]): number[] {
  const a = [0, 1, 2].map((r) =>
    [0, 1, 2].map((c) => units.reduce((sum, u) => sum + u[r]! * u[c]!, r === c ? 1e-12 : 0)),
  );
  const y = solve3(a, force);
  return units.map((u) => u[0]! * y[0]! + u[1]! * y[1]! + u[2]! * y[2]!);
}

/** Cramer's rule. */
function solve3(a: readonly (readonly number[])[], b: readonly number[]): number[] {
  const det = (m: readonly (readonly number[])[]) =>
    m[0]![0]! * (m[1]![1]! * m[2]![2]! - m[1]![2]! * m[2]![1]!) -
    m[0]![1]! * (m[1]![0]! * m[2]![2]! - m[1]![2]! * m[2]![0]!) +
    m[0]![2]! * (m[1]![0]! * m[2]![1]! - m[1]![1]! * m[2]![0]!);
  const whole = det(a);
  return [0, 1, 2].map((k) => det(a.map((row, r) => row.map((v, c) => (c === k ? b[r]! : v)))) / whole);
}

/** Force the legs leave unbalanced at rest [N], and whether one would have to push. */
export function legImbalance(problem: Problem, end: "A" | "B"): { unbalanced: number; pushes: boolean } {
  const legs = legsAt(problem, end);
  const pull = chordDirection(problem).map((c) => (end === "A" ? c : -c) * problem.main.pretension);
  const left = pull.map(
    (c, i) => c + legs.reduce((sum, { leg, tension }) => sum + (tension * leg.rock[i]!) / hypot(...leg.rock), 0),
  );
  return { unbalanced: hypot(left[0]!, left[1]!, left[2]!), pushes: legs.some(({ tension }) => tension < 0) };
}
