/**
 * Maxwell branches in incremental form (Simo & Hughes 1998, ch. 10; Ferry 1980), stepped exactly for a strain that runs
 * straight from step to step:  q ← A·q + B·Δε,  A = exp(−Δt/τ),  B = E·(τ/Δt)·(1 − A).
 *
 * Kept as r = q − B·ε, which needs no last strain:  T = T_eq(ε) + ΣB·ε + Σr,  then  r ← A·r − (1 − A)·B·ε.
 * All of r belong to one step size; a new step size needs r derived anew from q.
 */

import { exp, expm1 } from "../portable/index.ts";
import type { Branch } from "../problem.ts";

export interface MaxwellStep {
  readonly count: number;
  /** A = exp(−Δt/τ) [-]. */
  readonly decay: Float64Array;
  /** B = E·(τ/Δt)·(1 − A) [N]. */
  readonly stiffness: Float64Array;
  /** (1 − A)·B [N]. */
  readonly release: Float64Array;
  /** Δt/(E·τ): q² times this is the energy lost in a step, per natural length [1/N]. */
  readonly loss: Float64Array;
  /** 1/(2E): q² times this is the energy stored, per natural length [1/N]. */
  readonly compliance: Float64Array;
}

/** Coefficients of the branches for a step [s]. */
export function maxwellStep(branches: readonly Branch[], step: number): MaxwellStep {
  const count = branches.length;
  const make = (value: (stiffness: number, time: number) => number) =>
    Float64Array.from(branches, ([stiffness, time]) => value(stiffness, time));
  const stiffnessOf = (e: number, tau: number) => (e * tau * -expm1(-step / tau)) / step;
  return {
    count,
    decay: make((_, tau) => exp(-step / tau)),
    stiffness: make(stiffnessOf),
    release: make((e, tau) => -expm1(-step / tau) * stiffnessOf(e, tau)),
    loss: make((e, tau) => step / (e * tau)),
    compliance: make((e) => 1 / (2 * e)),
  };
}

/** Sum of the branches' stiffnesses: the stiffness that they add in a fast pull [N]. */
export const branchStiffness = (branches: readonly Branch[]): number => branches.reduce((sum, [e]) => sum + e, 0);
