/**
 * The hot loop, readable reference and fallback: one step of one line, in one sweep over its memory (see `lineLayout.ts`).
 *
 * Symbols: e strain [-], T tension [N], r branch state [N] (see `maxwell.ts`), A decay, B stiffness, C release, W work [J].
 * Nothing is allocated; nothing throws. Work of stretching is booked by the trapezoid of tension over strain.
 */
import { GRAVITY } from "../constants.ts";
import { COLUMN, HEAD, ROWS, ROWS_COLUMN, RUN, TINY } from "./lineLayout.ts";

/**
 * One run of elements: their forces, their branches moved on by one step, and behind them the nodes. Once element i has its
 * force, nothing reads node i at its old place any more: velocities by the forces on either side and gravity, then positions
 * (symplectic Euler, leapfrog). The line's end nodes are the caller's; `before` holds the forces of the element before.
 */
function sweepRun(m: Float64Array, head: number, run: number, before: Float64Array): void {
  const base = m[head + HEAD.base]! | 0;
  const pitch = m[head + HEAD.pitch]! | 0;
  const step = m[head + HEAD.step]!;
  const first = m[run + RUN.first]! | 0;
  const last = m[run + RUN.last]! | 0;
  const slope = m[run + RUN.endSlope]!;
  const end = m[run + RUN.end]!;
  const table = (run + RUN.table) | 0;
  const tableEnd = (table + 5 * m[run + RUN.cubics]!) | 0;
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
  const X = base | 0;
  const Y = (X + pitch) | 0;
  const Z = (Y + pitch) | 0;
  const VX = (Z + pitch) | 0;
  const VY = (VX + pitch) | 0;
  const VZ = (VY + pitch) | 0;
  const IM = (VZ + pitch) | 0;
  const IL = (IM + pitch) | 0;
  const R1 = (IL + pitch) | 0;
  const R2 = (R1 + pitch) | 0;
  const R3 = (R2 + pitch) | 0;
  const R4 = (R3 + pitch) | 0;
  const TT = (base + COLUMN.T * pitch) | 0;
  const E = (TT + pitch) | 0;
  const P = (E + pitch) | 0;
  const H = (P + pitch) | 0;
  const Q = (H + pitch) | 0;
  const fall = GRAVITY * step;
  // Every other element's work is summed apart: the order in which two lanes do it.
  let W = 0;
  let otherW = 0;
  let px = m[X + first]!;
  let py = m[Y + first]!;
  let pz = m[Z + first]!;
  // Velocities of the current node before the step. The node has its new velocities when the next element comes to it.
  let ox = m[VX + first]!;
  let oy = m[VY + first]!;
  let oz = m[VZ + first]!;
  let fx = before[0]!;
  let fy = before[1]!;
  let fz = before[2]!;
  for (let i = first; i < last; i++) {
    const qx = m[(X + i + 1) | 0]!;
    const qy = m[(Y + i + 1) | 0]!;
    const qz = m[(Z + i + 1) | 0]!;
    const dx = qx - px;
    const dy = qy - py;
    const dz = qz - pz;
    const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const wx = m[(VX + i + 1) | 0]!;
    const wy = m[(VY + i + 1) | 0]!;
    const wz = m[(VZ + i + 1) | 0]!;
    const ux = wx - ox;
    const uy = wy - oy;
    const uz = wz - oz;
    // Less a quarter of the square of the angle it turns in a step (see THEORY.md): of all motion, what is not stretching.
    const was = m[(E + i) | 0]!;
    const chord = length * m[(IL + i) | 0]! - 1;
    const half = 0.5 * (chord - was);
    const turned = m[(Q + i) | 0]! * (ux * ux + uy * uy + uz * uz) - half * half;
    const e = turned > 0 ? chord - turned : chord;
    const pulled = m[(TT + i) | 0]!;
    let T = 0;
    if (e > 0) {
      // Slow-pull curve: straight beyond `end`, cubics below it, in the order of their strains.
      T = e > end ? slope * (e - end) : 0;
      for (let k = table; k < tableEnd; k = (k + 5) | 0) {
        let u = e - m[k]!;
        if (u <= 0) break;
        const width = m[k + 1]!;
        if (u > width) u = width;
        T += u * (m[k + 2]! + u * (m[k + 3]! + u * m[k + 4]!));
      }
      const r1 = m[(R1 + i) | 0]!;
      const r2 = m[(R2 + i) | 0]!;
      const r3 = m[(R3 + i) | 0]!;
      const r4 = m[(R4 + i) | 0]!;
      T += sumB * e + (r1 + r2 + (r3 + r4));
      if (further) T += m[(P + i) | 0]!;
      if (T < 0) T = 0;
      m[(R1 + i) | 0] = A1 * r1 - C1 * e;
      m[(R2 + i) | 0] = A2 * r2 - C2 * e;
      m[(R3 + i) | 0] = A3 * r3 - C3 * e;
      m[(R4 + i) | 0] = A4 * r4 - C4 * e;
    } else {
      // Slack: what the branches still held is lost.
      m[(R1 + i) | 0] = 0;
      m[(R2 + i) | 0] = 0;
      m[(R3 + i) | 0] = 0;
      m[(R4 + i) | 0] = 0;
      // It pulled all through the step in which it went slack: it gives back what was too much.
      if (pulled > 0) T = (pulled * e) / (was - e);
    }
    const sum = W + m[(H + i) | 0]! * ((pulled + T) * (e - was));
    W = otherW;
    otherW = sum;
    m[(TT + i) | 0] = T;
    m[(E + i) | 0] = e;
    const s = T / Math.max(length, TINY);
    m[(P + i) | 0] = s;
    const gx = s * dx;
    const gy = s * dy;
    const gz = s * dz;
    if (i === 0) {
      m[head + HEAD.firstPull] = gx;
      m[head + HEAD.firstPull + 1] = gy;
      m[head + HEAD.firstPull + 2] = gz;
    } else {
      const w = m[(IM + i) | 0]! * step;
      const vx = m[(VX + i) | 0]! + (gx - fx) * w;
      const vy = m[(VY + i) | 0]! + (gy - fy) * w;
      const vz = m[(VZ + i) | 0]! + (gz - fz) * w - fall;
      m[(VX + i) | 0] = vx;
      m[(VY + i) | 0] = vy;
      m[(VZ + i) | 0] = vz;
      m[(X + i) | 0] = px + step * vx;
      m[(Y + i) | 0] = py + step * vy;
      m[(Z + i) | 0] = pz + step * vz;
    }
    fx = gx;
    fy = gy;
    fz = gz;
    ox = wx;
    oy = wy;
    oz = wz;
    px = qx;
    py = qy;
    pz = qz;
  }
  before[0] = m[head + HEAD.lastPull] = fx;
  before[1] = m[head + HEAD.lastPull + 1] = fy;
  before[2] = m[head + HEAD.lastPull + 2] = fz;
  m[head + HEAD.work] = m[head + HEAD.work]! + (W + otherW);
}

/**
 * Branches five to eight of a run: leaves their tension in the P column, where the sweep picks it up before it writes its
 * pull there. Rare, so kept apart.
 */
function furtherBranches(m: Float64Array, head: number, run: number): void {
  const base = m[head + HEAD.base]!;
  const pitch = m[head + HEAD.pitch]!;
  const branches = m[run + RUN.branches]!;
  for (let i = m[run + RUN.first]!; i < m[run + RUN.last]!; i++) {
    const x = base + i;
    const dx = m[x + 1]! - m[x]!;
    const dy = m[x + pitch + 1]! - m[x + pitch]!;
    const dz = m[x + 2 * pitch + 1]! - m[x + 2 * pitch]!;
    const v = x + COLUMN.VX * pitch;
    const ux = m[v + 1]! - m[v]!;
    const uy = m[v + pitch + 1]! - m[v + pitch]!;
    const uz = m[v + 2 * pitch + 1]! - m[v + 2 * pitch]!;
    const chord = Math.sqrt(dx * dx + dy * dy + dz * dz) * m[x + COLUMN.IL * pitch]! - 1;
    const half = 0.5 * (chord - m[x + COLUMN.E * pitch]!);
    const turned = m[x + COLUMN.Q * pitch]! * (ux * ux + uy * uy + uz * uz) - half * half;
    const e = turned > 0 ? chord - turned : chord;
    let tension = 0;
    for (let b = 4; b < branches; b++) {
      const at = x + (COLUMN.R + b) * pitch;
      const r = m[at]!;
      tension += e > 0 ? r + m[run + RUN.stiffness + b]! * e : 0;
      m[at] = e > 0 ? m[run + RUN.decay + b]! * r - m[run + RUN.release + b]! * e : 0;
    }
    m[x + COLUMN.P * pitch] = tension;
  }
}

/** The most by which tension exceeds strength anywhere; 0 if it does nowhere. */
function findExcess(m: Float64Array, head: number): void {
  const pitch = m[head + HEAD.pitch]! | 0;
  const S = (m[head + HEAD.base]! + COLUMN.S * pitch) | 0;
  let excess = 0;
  // The columns' spare places hold zeros.
  for (let i = 0; i < pitch; i++) {
    const over = m[(S + pitch + i) | 0]! - m[(S + i) | 0]!;
    if (over > excess) excess = over;
  }
  m[head + HEAD.excess] = excess;
}

/** One step of one line. */
function stepLine(m: Float64Array, head: number, before: Float64Array): void {
  const runs = m[head + HEAD.runs]!;
  const runCount = m[head + HEAD.runCount]!;
  const runPitch = m[head + HEAD.runPitch]!;
  for (let k = 0; k < runCount; k++) {
    const run = runs + k * runPitch;
    if (m[run + RUN.branches]! > 4) furtherBranches(m, head, run);
    sweepRun(m, head, run, before);
  }
  if (m[head + HEAD.breakable] === 1) findExcess(m, head);
}

/**
 * Takes a row of tensions through the filter, forward: row `place` of those that are kept (see `ROWS`). Below zero there is
 * nothing: an element that gives back what it pulled too long carries no load.
 */
function filterRow(m: Float64Array, head: number, place: number): void {
  const count = m[head + ROWS.count]! | 0;
  const places = m[head + ROWS.places]! | 0;
  const share = m[head + ROWS.share]!;
  const a0 = m[head + ROWS.a0]!;
  const a1 = m[head + ROWS.a1]!;
  const b1 = m[head + ROWS.b1]!;
  const b2 = m[head + ROWS.b2]!;
  const T = m[head + ROWS.tensions]! | 0;
  const before = (head + ROWS.columns + ROWS_COLUMN.before * count) | 0;
  const X = (before + ROWS_COLUMN.x * count) | 0;
  const X2 = (X + (place & 1) * count) | 0;
  const X1 = (X + (1 - (place & 1)) * count) | 0;
  const block = 2 * place < places ? 0 : 1;
  const low = (before + (ROWS_COLUMN.low + block) * count) | 0;
  const high = (before + (ROWS_COLUMN.high + block) * count) | 0;
  const rows = (before + ROWS_COLUMN.rows * count) | 0;
  const Y = (rows + place * count) | 0;
  const Y1 = (rows + ((place + places - 1) % places) * count) | 0;
  const Y2 = (rows + ((place + places - 2) % places) * count) | 0;
  for (let e = 0; e < count; e++) {
    const was = m[(before + e) | 0]!;
    const is = m[(T + e) | 0]!;
    const from = Math.max(was, 0);
    const to = Math.max(is, 0);
    const x = from + share * (to - from);
    const y = a0 * (x + m[(X2 + e) | 0]!) + a1 * m[(X1 + e) | 0]! + (b2 * m[(Y2 + e) | 0]! + b1 * m[(Y1 + e) | 0]!);
    m[(X2 + e) | 0] = x;
    m[(Y + e) | 0] = y;
    if (y < m[(low + e) | 0]!) m[(low + e) | 0] = y;
    if (y > m[(high + e) | 0]!) m[(high + e) | 0] = y;
  }
}

/** A kernel moves one line on by one step, and its tensions through a filter; end nodes are the caller's. */
export interface LineKernel {
  readonly name: "typescript" | "wasm";
  readonly memory: Float64Array;
  /**
   * Moves the line whose head (see `HEAD`) lies at this place, which is not 0, and those chained to it. Whole numbers only:
   * others would end up on the heap.
   */
  step(head: number): void;
  /** Takes the tensions of the line whose rows (see `ROWS`) lie at `head` into its kept row `place`. Lines chained to it follow. */
  row(head: number, place: number): void;
}

/** The kernel in TypeScript, on memory of its own of so many numbers. */
export function typescriptKernel(size: number): LineKernel {
  const memory = new Float64Array(size);
  const before = new Float64Array(3);
  return {
    name: "typescript",
    memory,
    step(first) {
      for (let head = first; head > 0; head = memory[head + HEAD.next]! | 0) stepLine(memory, head, before);
    },
    row(first, place) {
      for (let head = first; head > 0; head = memory[head + ROWS.next]! | 0) filterRow(memory, head, place);
    },
  };
}
