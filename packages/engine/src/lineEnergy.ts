/** Energy held in a line, read from the kernel's memory; for the audit, outside the hot loop. */
import { GRAVITY } from "./constants.ts";
import { COLUMN, RUN } from "./lineLayout.ts";
import { branchStiffness } from "./maxwell.ts";
import type { Line, Run } from "./model.ts";
import { energyAt, overdrawn } from "./tensionCurve.ts";

/** Energy of one element in slow-pull stretch and branches, at the positions and states in memory [J]. */
export function elementEnergy(line: Line, m: Float64Array, e: number, runIndex: number): number {
  const inverseLength = m[line.base + COLUMN.IL * line.pitch + e]!;
  if (inverseLength === 0) return 0;
  const run = line.runs[runIndex]!;
  return strainEnergy(line, m, e, run, line.runsAt + runIndex * line.runPitch, inverseLength) / inverseLength;
}

function strainEnergy(line: Line, m: Float64Array, e: number, run: Run, at: number, inverseLength: number): number {
  const { base, pitch } = line;
  const x = base + e;
  const dx = m[x + 1]! - m[x]!;
  const dy = m[x + pitch + 1]! - m[x + pitch]!;
  const dz = m[x + 2 * pitch + 1]! - m[x + 2 * pitch]!;
  const strain = Math.sqrt(dx * dx + dy * dy + dz * dz) * inverseLength - 1;
  if (strain <= 0) return 0;
  let energy = energyAt(run.curve, strain);
  let pull = 0;
  for (let b = 0; b < run.material.branches.length; b++) {
    const q = m[x + (COLUMN.R + b) * pitch]! + m[at + RUN.stiffness + b]! * strain;
    energy += m[at + RUN.compliance + b]! * q * q;
    pull += q;
  }
  return pull < 0 ? energy - overdrawn(run.curve, strain, pull, branchStiffness(run.material.branches)) : energy;
}

/**
 * Energy held in the whole line at its positions [J]. Where `ahead` is given, it takes how much longer every element is than the
 * strain says that its tension in this step will be of, for what it turns [m]; for the audit, before the step.
 */
export function stretchEnergy(line: Line, m: Float64Array, ahead?: Float64Array): number {
  let energy = 0;
  for (let k = 0; k < line.runs.length; k++) energy += runEnergy(line, m, k, ahead);
  return energy;
}

/** Energy held in a run; four branches at a time, of which those that a material has not are zeros. */
function runEnergy(line: Line, m: Float64Array, k: number, ahead: Float64Array | undefined): number {
  const { first, last, curve, material, elementLength } = line.runs[k]!;
  if (elementLength === 0) return 0;
  const { base, pitch } = line;
  const Y = base + pitch;
  const Z = Y + pitch;
  const IL = base + COLUMN.IL * pitch;
  const { endSlope } = curve;
  const straight = curve.cubics.length === 0;
  const at = line.runsAt + k * line.runPitch;
  const turn = m[at + RUN.turn]!;
  const stiffness = branchStiffness(material.branches);
  const fours = Math.ceil(material.branches.length / 4);
  let energy = 0;
  for (let e = first; e < last; e++) {
    const inverseLength = m[IL + e]!;
    const dx = m[base + e + 1]! - m[base + e]!;
    const dy = m[Y + e + 1]! - m[Y + e]!;
    const dz = m[Z + e + 1]! - m[Z + e]!;
    const strain = Math.sqrt(dx * dx + dy * dy + dz * dz) * inverseLength - 1;
    if (!(strain > 0)) {
      if (ahead) ahead[e] = 0;
      continue;
    }
    if (ahead) ahead[e] = turning(line, m, e, strain, turn) / inverseLength;
    let density = straight ? 0.5 * endSlope * strain * strain : energyAt(curve, strain);
    let pull = 0;
    for (let b = 0; b < fours; b++) {
      const R = base + (COLUMN.R + 4 * b) * pitch + e;
      const B = at + RUN.stiffness + 4 * b;
      const q1 = m[R]! + m[B]! * strain;
      const q2 = m[R + pitch]! + m[B + 1]! * strain;
      const q3 = m[R + 2 * pitch]! + m[B + 2]! * strain;
      const q4 = m[R + 3 * pitch]! + m[B + 3]! * strain;
      const C = at + RUN.compliance + 4 * b;
      density += m[C]! * q1 * q1 + m[C + 1]! * q2 * q2 + (m[C + 2]! * q3 * q3 + m[C + 3]! * q4 * q4);
      pull += q1 + q2 + (q3 + q4);
    }
    if (pull < 0) density -= overdrawn(curve, strain, pull, stiffness);
    energy += density / inverseLength;
  }
  return energy;
}

/** What the kernels take off an element's strain for the angle that it turns in a step, before the step [-]. */
function turning(line: Line, m: Float64Array, e: number, chord: number, turn: number): number {
  const { base, pitch } = line;
  const V = base + COLUMN.VX * pitch + e;
  const ux = m[V + 1]! - m[V]!;
  const uy = m[V + pitch + 1]! - m[V + pitch]!;
  const uz = m[V + 2 * pitch + 1]! - m[V + 2 * pitch]!;
  const half = 0.5 * (chord - m[base + COLUMN.E * pitch + e]!);
  return Math.max(0, turn * (ux * ux + uy * uy + uz * uz) - half * half);
}

/** Height energy of the line's nodes above z = 0 [J]. */
export function heightEnergy(line: Line, m: Float64Array): number {
  const { masses, nodes } = line;
  const Z = line.base + COLUMN.Z * line.pitch;
  let energy = 0;
  for (let i = 0; i < nodes; i++) energy += masses[i]! * m[Z + i]!;
  return energy * GRAVITY;
}

/** ½·m·v₋·v₊ over all nodes: the kinetic energy that the leapfrog scheme conserves with the energy at x [J]. */
export function kineticEnergy(line: Line, m: Float64Array, before: Float64Array): number {
  const { masses, nodes, pitch } = line;
  const VX = line.base + COLUMN.VX * pitch;
  const VY = VX + pitch;
  const VZ = VY + pitch;
  let energy = 0;
  for (let i = 0; i < nodes; i++) {
    const x = before[i]! * m[VX + i]!;
    const y = before[pitch + i]! * m[VY + i]!;
    const z = before[2 * pitch + i]! * m[VZ + i]!;
    energy += masses[i]! * (x + y + z);
  }
  return 0.5 * energy;
}
