/**
 * The hot loop, readable reference and fallback: one step of one line, in two passes over its memory (see `lineLayout.ts`).
 *
 * Symbols: e strain [-], T tension [N], r branch state [N] (see `maxwell.ts`), A decay, B stiffness, C release, W work [J].
 * Nothing is allocated; nothing throws. Results come back in `out`: out[0] gains the work that stretching the line took (by
 * the trapezoid of tension over strain), out[1] is the largest excess of tension over strength [N].
 */
import { GRAVITY } from "./constants.ts";
import { COLUMN, RUN } from "./lineLayout.ts";

/** Keeps the direction of an element of no length finite; far below the rounding of any real length squared [m²]. */
const TINY = 1e-300;

/** Element forces of the run at `run`, and the branches moved on by one step. */
function elementPass(m: Float64Array, base: number, pitch: number, run: number, out: Float64Array): void {
  const first = m[run + RUN.first]!;
  const last = m[run + RUN.last]!;
  const slope = m[run + RUN.endSlope]!;
  const end = m[run + RUN.end]!;
  const tableEnd = run + RUN.table + 5 * m[run + RUN.cubics]!;
  const sumB = m[run + RUN.stiffnessSum]!;
  const further = m[run + RUN.branches]! > 4;
  const A1 = m[run + RUN.decay]!;
  const A2 = m[run + RUN.decay + 1]!;
  const A3 = m[run + RUN.decay + 2]!;
  const A4 = m[run + RUN.decay + 3]!;
  const C1 = m[run + RUN.release]!;
  const C2 = m[run + RUN.release + 1]!;
  const C3 = m[run + RUN.release + 2]!;
  const C4 = m[run + RUN.release + 3]!;
  const X = base + COLUMN.X * pitch;
  const Y = base + COLUMN.Y * pitch;
  const Z = base + COLUMN.Z * pitch;
  const IL = base + COLUMN.IL * pitch;
  const R1 = base + COLUMN.R * pitch;
  const R2 = R1 + pitch;
  const R3 = R2 + pitch;
  const R4 = R3 + pitch;
  const S = base + COLUMN.S * pitch;
  const TT = base + COLUMN.T * pitch;
  const E = base + COLUMN.E * pitch;
  const FX = base + COLUMN.FX * pitch;
  const FY = base + COLUMN.FY * pitch;
  const FZ = base + COLUMN.FZ * pitch;
  let W = 0;
  let excess = out[1]!;
  let px = m[X + first]!;
  let py = m[Y + first]!;
  let pz = m[Z + first]!;
  for (let i = first; i < last; i++) {
    const qx = m[X + 1 + i]!;
    const qy = m[Y + 1 + i]!;
    const qz = m[Z + 1 + i]!;
    const dx = qx - px;
    const dy = qy - py;
    const dz = qz - pz;
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz + TINY);
    const e = length * m[IL + i]! - 1;
    const r1 = m[R1 + i]!;
    const r2 = m[R2 + i]!;
    const r3 = m[R3 + i]!;
    const r4 = m[R4 + i]!;
    let T = 0;
    if (e > 0) {
      // Slow-pull curve: straight beyond `end`, cubics below it.
      T = e > end ? slope * (e - end) : 0;
      for (let k = run + RUN.table; k < tableEnd; k += 5) {
        let u = e - m[k]!;
        if (u < 0) u = 0;
        const width = m[k + 1]!;
        if (u > width) u = width;
        T += u * (m[k + 2]! + u * (m[k + 3]! + u * m[k + 4]!));
      }
      T += sumB * e + (r1 + r2 + (r3 + r4));
      if (further) T += m[FX + i]!;
      if (T < 0) T = 0;
      m[R1 + i] = A1 * r1 - C1 * e;
      m[R2 + i] = A2 * r2 - C2 * e;
      m[R3 + i] = A3 * r3 - C3 * e;
      m[R4 + i] = A4 * r4 - C4 * e;
    } else {
      // Slack: what the branches still held is lost.
      m[R1 + i] = 0;
      m[R2 + i] = 0;
      m[R3 + i] = 0;
      m[R4 + i] = 0;
    }
    W += (m[TT + i]! + T) * (e - m[E + i]!);
    m[TT + i] = T;
    m[E + i] = e;
    const over = T - m[S + i]!;
    if (over > excess) excess = over;
    const s = T / length;
    m[FX + i] = s * dx;
    m[FY + i] = s * dy;
    m[FZ + i] = s * dz;
    px = qx;
    py = qy;
    pz = qz;
  }
  out[0] = out[0]! + W * m[run + RUN.halfLength]!;
  out[1] = excess;
}

/**
 * Branches five to eight of a run: leaves their tension in the FX column, where `elementPass` picks it up before it writes its
 * forces there. Rare, so kept apart.
 */
function furtherBranches(m: Float64Array, base: number, pitch: number, run: number): void {
  const branches = m[run + RUN.branches]!;
  for (let i = m[run + RUN.first]!; i < m[run + RUN.last]!; i++) {
    const x = base + i;
    const dx = m[x + 1]! - m[x]!;
    const dy = m[x + pitch + 1]! - m[x + pitch]!;
    const dz = m[x + 2 * pitch + 1]! - m[x + 2 * pitch]!;
    const e = Math.sqrt(dx * dx + dy * dy + dz * dz + TINY) * m[x + COLUMN.IL * pitch]! - 1;
    let tension = 0;
    for (let b = 4; b < branches; b++) {
      const at = x + (COLUMN.R + b) * pitch;
      const r = m[at]!;
      tension += e > 0 ? r + m[run + RUN.stiffness + b]! * e : 0;
      m[at] = e > 0 ? m[run + RUN.decay + b]! * r - m[run + RUN.release + b]! * e : 0;
    }
    m[x + COLUMN.FX * pitch] = tension;
  }
}

/** Inner nodes 1 … nodes − 2: velocities by the element forces and gravity, then positions (symplectic Euler, leapfrog). */
function nodePass(m: Float64Array, base: number, pitch: number, nodes: number, step: number): void {
  const X = base + COLUMN.X * pitch;
  const Y = base + COLUMN.Y * pitch;
  const Z = base + COLUMN.Z * pitch;
  const VX = base + COLUMN.VX * pitch;
  const VY = base + COLUMN.VY * pitch;
  const VZ = base + COLUMN.VZ * pitch;
  const IM = base + COLUMN.IM * pitch;
  const FX = base + COLUMN.FX * pitch;
  const FY = base + COLUMN.FY * pitch;
  const FZ = base + COLUMN.FZ * pitch;
  const fall = GRAVITY * step;
  let fx = m[FX]!;
  let fy = m[FY]!;
  let fz = m[FZ]!;
  for (let i = 1; i < nodes - 1; i++) {
    const gx = m[FX + i]!;
    const gy = m[FY + i]!;
    const gz = m[FZ + i]!;
    const w = m[IM + i]! * step;
    const vx = m[VX + i]! + (gx - fx) * w;
    const vy = m[VY + i]! + (gy - fy) * w;
    const vz = m[VZ + i]! + (gz - fz) * w - fall;
    m[VX + i] = vx;
    m[VY + i] = vy;
    m[VZ + i] = vz;
    m[X + i] = m[X + i]! + step * vx;
    m[Y + i] = m[Y + i]! + step * vy;
    m[Z + i] = m[Z + i]! + step * vz;
    fx = gx;
    fy = gy;
    fz = gz;
  }
}

/** A kernel moves one line on by one step; end nodes are the caller's. */
export interface LineKernel {
  readonly name: "typescript" | "wasm";
  readonly memory: Float64Array;
  step(
    base: number,
    pitch: number,
    nodes: number,
    runs: number,
    runCount: number,
    runPitch: number,
    step: number,
    out: Float64Array,
  ): void;
}

/** The kernel in TypeScript, on memory of its own of so many numbers. */
export function typescriptKernel(size: number): LineKernel {
  const memory = new Float64Array(size);
  return {
    name: "typescript",
    memory,
    step(base, pitch, nodes, runs, runCount, runPitch, step, out) {
      for (let k = 0; k < runCount; k++) {
        const run = runs + k * runPitch;
        if (memory[run + RUN.branches]! > 4) furtherBranches(memory, base, pitch, run);
        elementPass(memory, base, pitch, run, out);
      }
      nodePass(memory, base, pitch, nodes, step);
    },
  };
}
