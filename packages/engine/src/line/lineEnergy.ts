/** Energy held in a line, read from the kernel's memory; for the audit, outside the hot loop. */
import { GRAVITY } from "../constants.ts";
import { COLUMN, RUN } from "../kernel/lineLayout.ts";
import type { Line, Run } from "./line.ts";
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
  return pull < 0 ? energy - overdrawn(run.curve, strain, pull, run.stiffness) : energy;
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

/** Energy held in a run, four branches at a time; branches that the material does not have are zeros. */
function runEnergy(line: Line, m: Float64Array, k: number, ahead: Float64Array | undefined): number {
  const { first, last, curve, material, stiffness } = line.runs[k]!;
  const pitch = line.pitch | 0;
  const X = line.base | 0;
  const Y = (X + pitch) | 0;
  const Z = (Y + pitch) | 0;
  const VX = (X + COLUMN.VX * pitch) | 0;
  const VY = (VX + pitch) | 0;
  const VZ = (VY + pitch) | 0;
  const IL = (X + COLUMN.IL * pitch) | 0;
  const E = (X + COLUMN.E * pitch) | 0;
  const Q = (X + COLUMN.Q * pitch) | 0;
  const { endSlope } = curve;
  const straight = curve.cubics.length === 0;
  const at = (line.runsAt + k * line.runPitch) | 0;
  const fours = Math.ceil(material.branches.length / 4);
  let energy = 0;
  for (let e = first; e < last; e++) {
    const dx = m[(X + e + 1) | 0]! - m[(X + e) | 0]!;
    const dy = m[(Y + e + 1) | 0]! - m[(Y + e) | 0]!;
    const dz = m[(Z + e + 1) | 0]! - m[(Z + e) | 0]!;
    const inverseLength = m[(IL + e) | 0]!;
    const strain = Math.sqrt(dx * dx + dy * dy + dz * dz) * inverseLength - 1;
    if (!(strain > 0)) {
      if (ahead) ahead[e] = 0;
      continue;
    }
    const length = 1 / inverseLength;
    if (ahead) {
      // What the kernels take off the strain for the angle that the element turns in a step.
      const ux = m[(VX + e + 1) | 0]! - m[(VX + e) | 0]!;
      const uy = m[(VY + e + 1) | 0]! - m[(VY + e) | 0]!;
      const uz = m[(VZ + e + 1) | 0]! - m[(VZ + e) | 0]!;
      const half = 0.5 * (strain - m[(E + e) | 0]!);
      const turned = m[(Q + e) | 0]! * (ux * ux + uy * uy + uz * uz) - half * half;
      ahead[e] = turned > 0 ? turned * length : 0;
    }
    let density = straight ? 0.5 * endSlope * strain * strain : energyAt(curve, strain);
    let pull = 0;
    for (let b = 0; b < fours; b++) {
      const R = (X + (COLUMN.R + 4 * b) * pitch + e) | 0;
      const B = (at + RUN.stiffness + 4 * b) | 0;
      const C = (at + RUN.compliance + 4 * b) | 0;
      const q1 = m[R]! + m[B]! * strain;
      const q2 = m[(R + pitch) | 0]! + m[(B + 1) | 0]! * strain;
      const q3 = m[(R + 2 * pitch) | 0]! + m[(B + 2) | 0]! * strain;
      const q4 = m[(R + 3 * pitch) | 0]! + m[(B + 3) | 0]! * strain;
      density += m[C]! * q1 * q1 + m[(C + 1) | 0]! * q2 * q2;
      density += m[(C + 2) | 0]! * q3 * q3 + m[(C + 3) | 0]! * q4 * q4;
      pull += q1 + q2 + (q3 + q4);
    }
    if (pull < 0) density -= overdrawn(curve, strain, pull, stiffness);
    energy += density * length;
  }
  return energy;
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
