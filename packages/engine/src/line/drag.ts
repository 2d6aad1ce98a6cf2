/** Air drag: ½·ρ·C_d·d·|v|·v per natural length on the velocity across the line, ½·ρ·(C_d·A)·|v|·v on the walker. */

import { COLUMN } from "../kernel/lineLayout.ts";
import { hypot } from "../portable/index.ts";
import type { Problem } from "../problem.ts";
import type { Line } from "./line.ts";

/** Gives every inner node and the walker the impulse of one step; returns the energy taken [J]. */
export function addDrag(
  lines: readonly Line[],
  m: Float64Array,
  problem: Problem,
  walker: Float64Array,
  step: number,
): number {
  const density = problem.airDensity ?? 0;
  let taken = 0;
  for (const line of lines) {
    const make = line.name === "main" ? problem.main : problem.backup!;
    const perLength = 0.5 * density * (make.dragCoefficient ?? 0) * (make.width ?? 0);
    if (perLength > 0) taken += dragLine(line, m, perLength, step);
  }
  const area = 0.5 * density * (problem.walker.dragArea ?? 0);
  const speed = hypot(walker[3]!, walker[4]!, walker[5]!);
  const keep = slowed(area * speed, problem.walker.mass, step);
  taken += 0.5 * problem.walker.mass * speed * speed * (1 - keep * keep);
  for (let c = 3; c < 6; c++) walker[c] = walker[c]! * keep;
  return taken;
}

/** Share of speed left after a step under resistance k·|v|·v: exact for that law alone, so it never turns the motion round. */
const slowed = (kTimesSpeed: number, mass: number, step: number): number => 1 / (1 + (kTimesSpeed * step) / mass);

function dragLine(line: Line, m: Float64Array, perLength: number, step: number): number {
  const { base, pitch } = line;
  let taken = 0;
  for (let i = 1; i < line.nodes - 1; i++) {
    const x = base + i;
    let square = 0;
    let along = 0;
    for (let c = 0; c < 3; c++) {
      const chord = m[x + c * pitch + 1]! - m[x + c * pitch - 1]!;
      square += chord * chord;
      along += chord * m[x + (COLUMN.VX + c) * pitch]!;
    }
    if (square === 0) continue;
    let across = 0;
    for (let c = 0; c < 3; c++) {
      const v = m[x + (COLUMN.VX + c) * pitch]! - (along * (m[x + c * pitch + 1]! - m[x + c * pitch - 1]!)) / square;
      across += v * v;
    }
    const length = 0.5 * (line.lengths[i - 1]! + line.lengths[i]!);
    const keep = slowed(perLength * length * Math.sqrt(across), line.masses[i]!, step);
    taken += 0.5 * line.masses[i]! * across * (1 - keep * keep);
    for (let c = 0; c < 3; c++) {
      const V = x + (COLUMN.VX + c) * pitch;
      const v = m[V]! - (along * (m[x + c * pitch + 1]! - m[x + c * pitch - 1]!)) / square;
      m[V] = m[V]! - (1 - keep) * v;
    }
  }
  return taken;
}
