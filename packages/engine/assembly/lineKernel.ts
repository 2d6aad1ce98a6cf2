/**
 * The hot loop in AssemblyScript: one step of one line, two neighbouring elements at a time in the two lanes of a vector.
 * The same arithmetic in the same order as `src/kernel/lineKernel.ts`, which is the readable reference: results agree to the last
 * bit. Layout of the memory: `src/lineLayout.ts`, whose numbers stand here again in bytes.
 *
 * Strains first, then tensions, then nodes: what a short loop needs stays in the processor's registers, and it waits less for
 * square roots and divisions (`docs/decisions/0001-kernel.md`). A run with an odd number of elements ends with a pair whose
 * second lane is thrown away.
 */

/** Standard acceleration of free fall [m/s²]. */
const GRAVITY: f64 = 9.80665;


// Columns of a line.
const VX = 3;
const IL = 7;
const R = 8;
const S = 16;
const T = 17;
const E = 18;
const P = 19;
const H = 20;
const Q = 21;
const N = 22;

// Numbers of a line's head, as byte offsets.
const BASE = 0 << 3;
const PITCH = 1 << 3;
const RUNS = 2 << 3;
const RUN_COUNT = 3 << 3;
const RUN_PITCH = 4 << 3;
const STEP = 5 << 3;
const BREAKABLE = 6 << 3;
const WORK = 7 << 3;
const EXCESS = 8 << 3;
const PULLS = 9 << 3;
const NEXT = 15 << 3;

// Numbers of a run, as byte offsets.
const FIRST = 0 << 3;
const LAST = 1 << 3;
const BRANCHES = 2 << 3;
const END_SLOPE = 3 << 3;
const END = 4 << 3;
const CUBICS = 5 << 3;
const STIFFNESS_SUM = 6 << 3;
const DECAY = 8 << 3;
const STIFFNESS = 16 << 3;
const RELEASE = 24 << 3;
const ONE = 40 << 3;
const HALF = 41 << 3;
const TINY = 42 << 3;
const TABLE = 44 << 3;
const CUBIC = 5 << 3;

// Numbers of a line's rows of tensions, as byte offsets.
const TENSIONS = 0 << 3;
const COUNT = 1 << 3;
const PLACES = 2 << 3;
const SHARE = 3 << 3;
const A0 = 4 << 3;
const A1 = 5 << 3;
const B1 = 6 << 3;
const B2 = 7 << 3;
const NEXT_ROWS = 8 << 3;
const COLUMNS = 10 << 3;
// Columns of a row's length behind them.
const INPUT = 1;
const LOW = 3;
const HIGH = 5;
const OUTPUT = 7;

/** Writes both lanes, or the first only. */
// @ts-ignore: decorator
@inline
function put(at: i32, value: v128, single: bool): void {
  if (single) v128.store64_lane(at, value, 0);
  else v128.store(at, value);
}

/**
 * Strains that the tensions of a run's elements will be of, into the N column, and their lengths, into the P column. Apart from
 * what follows so that what is the same for all pairs stays in the processor's registers; the numbers 1 and ½ are read from
 * memory because the engine makes a constant anew, by four instructions, wherever it is used.
 */
// @ts-ignore: decorator
@inline
function strains(line: i32, pitch: i32, run: i32, from: i32, count: i32, single: bool): void {
  const one = v128.load64_splat(run, ONE);
  const half = v128.load64_splat(run, HALF);
  const zero = f64x2.splat(0);
  const toIL = IL * pitch;
  const toE = E * pitch;
  const toQ = (Q - E) * pitch;
  const toN = (N - E) * pitch;
  let x = line + (from << 3);
  const stop = x + (count << 3);
  for (; x < stop; x += 16) {
    const y = x + pitch;
    const z = y + pitch;
    const vx = z + pitch;
    const vy = vx + pitch;
    const vz = vy + pitch;
    const e = x + toE;
    const dx = f64x2.sub(v128.load(x, 8), v128.load(x));
    const dy = f64x2.sub(v128.load(y, 8), v128.load(y));
    const dz = f64x2.sub(v128.load(z, 8), v128.load(z));
    const square = f64x2.add(f64x2.add(f64x2.mul(dx, dx), f64x2.mul(dy, dy)), f64x2.mul(dz, dz));
    const length = f64x2.sqrt(square);
    const ux = f64x2.sub(v128.load(vx, 8), v128.load(vx));
    const uy = f64x2.sub(v128.load(vy, 8), v128.load(vy));
    const uz = f64x2.sub(v128.load(vz, 8), v128.load(vz));
    const turning = f64x2.add(f64x2.add(f64x2.mul(ux, ux), f64x2.mul(uy, uy)), f64x2.mul(uz, uz));
    const chord = f64x2.sub(f64x2.mul(length, v128.load(x + toIL)), one);
    const halfway = f64x2.mul(half, f64x2.sub(chord, v128.load(e)));
    const turned = f64x2.sub(f64x2.mul(v128.load(e + toQ), turning), f64x2.mul(halfway, halfway));
    put(e + pitch, length, single);
    put(e + toN, f64x2.sub(chord, f64x2.pmax(turned, zero)), single);
  }
}

/** Tensions of a run's elements, and their branches moved on; returns the work that stretching took. */
// @ts-ignore: decorator
@inline
function tensions(line: i32, pitch: i32, run: i32, from: i32, count: i32, single: bool, further: bool, cubics: i32, W: v128): v128 {
  const slope = v128.load64_splat(run, END_SLOPE);
  const sumB = v128.load64_splat(run, STIFFNESS_SUM);
  const A1 = v128.load64_splat(run, DECAY);
  const A2 = v128.load64_splat(run, DECAY + 8);
  const A3 = v128.load64_splat(run, DECAY + 16);
  const A4 = v128.load64_splat(run, DECAY + 24);
  const C1 = v128.load64_splat(run, RELEASE);
  const C2 = v128.load64_splat(run, RELEASE + 8);
  const C3 = v128.load64_splat(run, RELEASE + 16);
  const C4 = v128.load64_splat(run, RELEASE + 24);
  const tiny = v128.load64_splat(run, TINY);
  const zero = f64x2.splat(0);
  let t = line + T * pitch + (from << 3);
  const toR = (R - T) * pitch;
  const toN = (N - T) * pitch;
  const stop = t + (count << 3);
  for (; t < stop; t += 16) {
    const r1at = t + toR;
    const r2at = r1at + pitch;
    const r3at = r2at + pitch;
    const r4at = r3at + pitch;
    const eat = t + pitch;
    const pat = eat + pitch;
    const e = v128.load(t + toN);
    const r1 = v128.load(r1at);
    const r2 = v128.load(r2at);
    const r3 = v128.load(r3at);
    const r4 = v128.load(r4at);
    const pull = f64x2.add(f64x2.mul(sumB, e), f64x2.add(f64x2.add(r1, r2), f64x2.add(r3, r4)));
    const taut = f64x2.gt(e, zero);
    put(r1at, v128.and(f64x2.sub(f64x2.mul(A1, r1), f64x2.mul(C1, e)), taut), single);
    put(r2at, v128.and(f64x2.sub(f64x2.mul(A2, r2), f64x2.mul(C2, e)), taut), single);
    put(r3at, v128.and(f64x2.sub(f64x2.mul(A3, r3), f64x2.mul(C3, e)), taut), single);
    put(r4at, v128.and(f64x2.sub(f64x2.mul(A4, r4), f64x2.mul(C4, e)), taut), single);
    const last = v128.load(t);
    const was = v128.load(eat);
    let tension: v128;
    if (cubics) {
      // Slow-pull curve: straight beyond `end`, cubics below it, in the order of their strains.
      const end = v128.load64_splat(run, END);
      tension = v128.and(f64x2.mul(slope, f64x2.sub(e, end)), f64x2.gt(e, end));
      for (let k = run; k < run + cubics; k += CUBIC) {
        const beyond = f64x2.sub(e, v128.load64_splat(k, TABLE));
        if (!v128.any_true(f64x2.gt(beyond, zero))) break;
        const u = f64x2.pmin(f64x2.pmax(beyond, zero), v128.load64_splat(k, TABLE + 8));
        const inner = f64x2.add(v128.load64_splat(k, TABLE + 24), f64x2.mul(u, v128.load64_splat(k, TABLE + 32)));
        tension = f64x2.add(
          tension,
          f64x2.mul(u, f64x2.add(v128.load64_splat(k, TABLE + 16), f64x2.mul(u, inner))),
        );
      }
    } else tension = f64x2.mul(slope, e);
    tension = f64x2.add(tension, pull);
    if (further) tension = f64x2.add(tension, v128.load(t + toN + pitch));
    tension = v128.and(f64x2.pmax(tension, zero), taut);
    // It pulled all through the step in which it went slack: it gives back what was too much.
    const left = v128.andnot(f64x2.gt(last, zero), taut);
    if (v128.any_true(left)) {
      const back = f64x2.div(f64x2.mul(last, e), f64x2.sub(was, e));
      tension = v128.bitselect(back, tension, left);
    }
    const work = f64x2.mul(v128.load(pat + pitch), f64x2.mul(f64x2.add(last, tension), f64x2.sub(e, was)));
    put(t, tension, single);
    put(eat, e, single);
    put(pat, f64x2.div(tension, f64x2.pmax(v128.load(pat), tiny)), single);
    if (single) {
      W = f64x2.replace_lane(W, 0, f64x2.extract_lane(W, 0) + f64x2.extract_lane(work, 0));
    } else W = f64x2.add(W, work);
  }
  return W;
}

/** A whole run: its pairs, then the element that is left over. */
function elementsOfRun(line: i32, pitch: i32, run: i32): f64 {
  const first = <i32>load<f64>(run, FIRST);
  const count = <i32>load<f64>(run, LAST) - first;
  const even = count & ~1;
  const cubics = <i32>load<f64>(run, CUBICS) * CUBIC;
  const further = load<f64>(run, BRANCHES) > 4;
  strains(line, pitch, run, first, even, false);
  if (count & 1) strains(line, pitch, run, first + even, 1, true);
  if (further) furtherBranches(line, pitch, run);
  let W = f64x2.splat(0);
  if (further) W = anyTensions(line, pitch, run, first, even, false, true, cubics, W);
  else if (cubics) W = tableTensions(line, pitch, run, first, even, cubics, W);
  else W = straightTensions(line, pitch, run, first, even, W);
  if (count & 1) W = anyTensions(line, pitch, run, first + even, 1, true, further, cubics, W);
  return f64x2.extract_lane(W, 0) + f64x2.extract_lane(W, 1);
}

function straightTensions(line: i32, pitch: i32, run: i32, from: i32, count: i32, W: v128): v128 {
  return tensions(line, pitch, run, from, count, false, false, 0, W);
}
function tableTensions(line: i32, pitch: i32, run: i32, from: i32, count: i32, cubics: i32, W: v128): v128 {
  return tensions(line, pitch, run, from, count, false, false, cubics, W);
}
function anyTensions(line: i32, pitch: i32, run: i32, from: i32, count: i32, single: bool, further: bool, cubics: i32, W: v128): v128 {
  return tensions(line, pitch, run, from, count, single, further, cubics, W);
}

/** Branches five to eight of a run: leaves their tension in the column after the N column, where `tensions` picks it up. */
function furtherBranches(line: i32, pitch: i32, run: i32): void {
  const branches = <i32>load<f64>(run, BRANCHES);
  const stop = line + (<i32>load<f64>(run, LAST) << 3);
  for (let x = line + (<i32>load<f64>(run, FIRST) << 3); x < stop; x += 8) {
    const e = load<f64>(x + N * pitch);
    let tension: f64 = 0;
    for (let b = 4; b < branches; b++) {
      const at = x + (R + b) * pitch;
      const k = run + (b << 3);
      const r = load<f64>(at);
      tension += e > 0 ? r + load<f64>(k, STIFFNESS) * e : 0;
      store<f64>(at, e > 0 ? load<f64>(k, DECAY) * r - load<f64>(k, RELEASE) * e : 0);
    }
    store<f64>(x + (N + 1) * pitch, tension);
  }
}

/** Forces of the element before the nodes at hand, in the second lane. */
let lastFX: v128 = f64x2.splat(0);
let lastFY: v128 = f64x2.splat(0);
let lastFZ: v128 = f64x2.splat(0);

/**
 * Nodes from `x` on, until `stop`: element forces; velocities by them and gravity; then positions. Once the elements of a pair
 * have their forces, nothing reads its nodes at their old places any more.
 */
// @ts-ignore: decorator
@inline
function nodes(x: i32, stop: i32, pitch: i32, step: f64, single: bool): void {
  const dt = f64x2.splat(step);
  const fall = f64x2.splat(GRAVITY * step);
  const toP = P * pitch;
  let beforeX = lastFX;
  let beforeY = lastFY;
  let beforeZ = lastFZ;
  for (; x < stop; x += 16) {
    const y = x + pitch;
    const z = y + pitch;
    const vx = z + pitch;
    const vy = vx + pitch;
    const vz = vy + pitch;
    const s = v128.load(x + toP);
    const w = f64x2.mul(v128.load(vz + pitch), dt);
    const px = v128.load(x);
    const py = v128.load(y);
    const pz = v128.load(z);
    const fx = f64x2.mul(s, f64x2.sub(v128.load(x, 8), px));
    const fy = f64x2.mul(s, f64x2.sub(v128.load(y, 8), py));
    const fz = f64x2.mul(s, f64x2.sub(v128.load(z, 8), pz));
    const ux = f64x2.add(v128.load(vx), f64x2.mul(f64x2.sub(fx, v128.shuffle<f64>(beforeX, fx, 1, 2)), w));
    const uy = f64x2.add(v128.load(vy), f64x2.mul(f64x2.sub(fy, v128.shuffle<f64>(beforeY, fy, 1, 2)), w));
    const uz = f64x2.sub(
      f64x2.add(v128.load(vz), f64x2.mul(f64x2.sub(fz, v128.shuffle<f64>(beforeZ, fz, 1, 2)), w)),
      fall,
    );
    put(vx, ux, single);
    put(vy, uy, single);
    put(vz, uz, single);
    put(x, f64x2.add(px, f64x2.mul(dt, ux)), single);
    put(y, f64x2.add(py, f64x2.mul(dt, uy)), single);
    put(z, f64x2.add(pz, f64x2.mul(dt, uz)), single);
    beforeX = fx;
    beforeY = fy;
    beforeZ = fz;
  }
  lastFX = beforeX;
  lastFY = beforeY;
  lastFZ = beforeZ;
}

/** Force of an element on its first node, for the caller, who moves the end nodes. */
function tellPull(x: i32, pitch: i32, to: i32): void {
  const s = load<f64>(x + P * pitch);
  store<f64>(to, s * (load<f64>(x, 8) - load<f64>(x)));
  store<f64>(to, s * (load<f64>(x + pitch, 8) - load<f64>(x + pitch)), 8);
  store<f64>(to, s * (load<f64>(x + 2 * pitch, 8) - load<f64>(x + 2 * pitch)), 16);
}

/** All nodes but the two at the ends, which are the caller's: the first is moved with its pair and put back. */
function moveNodes(line: i32, pitch: i32, elements: i32, step: f64): void {
  const x = load<f64>(line);
  const y = load<f64>(line + pitch);
  const z = load<f64>(line + 2 * pitch);
  const v = line + VX * pitch;
  const vx = load<f64>(v);
  const vy = load<f64>(v + pitch);
  const vz = load<f64>(v + 2 * pitch);
  const odd = line + ((elements & ~1) << 3);
  nodes(line, odd, pitch, step, false);
  if (elements & 1) nodes(odd, odd + 8, pitch, step, true);
  store<f64>(line, x);
  store<f64>(line + pitch, y);
  store<f64>(line + 2 * pitch, z);
  store<f64>(v, vx);
  store<f64>(v + pitch, vy);
  store<f64>(v + 2 * pitch, vz);
}

/** By how much tension exceeds strength where it does so most; 0 where nowhere. The columns' spare places hold zeros. */
function findExcess(line: i32, pitch: i32): f64 {
  let excess = f64x2.splat(0);
  const stop = line + (S + 1) * pitch;
  for (let s = line + S * pitch; s < stop; s += 16) {
    excess = f64x2.pmax(excess, f64x2.sub(v128.load(s + pitch), v128.load(s)));
  }
  return max(f64x2.extract_lane(excess, 0), f64x2.extract_lane(excess, 1));
}

/** One step of the line whose head lies at this number of the memory, and of those chained to it; end nodes are the caller's. */
export function step(at: i32): void {
  for (; at; at = <i32>load<f64>(at << 3, NEXT)) stepLine(at << 3);
}

function stepLine(head: i32): void {
  const line = <i32>load<f64>(head, BASE) << 3;
  const pitch = <i32>load<f64>(head, PITCH) << 3;
  const runPitch = <i32>load<f64>(head, RUN_PITCH) << 3;
  const runCount = <i32>load<f64>(head, RUN_COUNT);
  let run = <i32>load<f64>(head, RUNS) << 3;
  let work = load<f64>(head, WORK);
  let last = 0;
  for (let k = 0; k < runCount; k++, run += runPitch) {
    work += elementsOfRun(line, pitch, run);
    last = <i32>load<f64>(run, LAST);
  }
  store<f64>(head, work, WORK);
  if (load<f64>(head, BREAKABLE) == 1) store<f64>(head, findExcess(line, pitch), EXCESS);
  tellPull(line, pitch, head + PULLS);
  tellPull(line + ((last - 1) << 3), pitch, head + PULLS + 24);
  moveNodes(line, pitch, last, load<f64>(head, STEP));
}

/**
 * Takes a row of tensions through the filter: row `place` of those kept for the line whose rows lie at this number of the
 * memory, and for those chained to it.
 */
export function row(at: i32, place: i32): void {
  for (; at; at = <i32>load<f64>(at << 3, NEXT_ROWS)) filterRow(at << 3, place);
}

function filterRow(head: i32, place: i32): void {
  const count = <i32>load<f64>(head, COUNT) << 3;
  const places = <i32>load<f64>(head, PLACES);
  const share = v128.load64_splat(head, SHARE);
  const a0 = v128.load64_splat(head, A0);
  const a1 = v128.load64_splat(head, A1);
  const b1 = v128.load64_splat(head, B1);
  const b2 = v128.load64_splat(head, B2);
  const zero = f64x2.splat(0);
  const before = head + COLUMNS;
  const block = 2 * place < places ? 0 : 1;
  const rows = before + OUTPUT * count;
  let tensions = <i32>load<f64>(head, TENSIONS) << 3;
  let x2 = before + (INPUT + (place & 1)) * count;
  let x1 = before + (INPUT + 1 - (place & 1)) * count;
  let low = before + (LOW + block) * count;
  let high = before + (HIGH + block) * count;
  let y = rows + place * count;
  let y1 = rows + ((place + places - 1) % places) * count;
  let y2 = rows + ((place + places - 2) % places) * count;
  const stop = before + count;
  for (let e = before; e < stop; e += 16) {
    const from = f64x2.pmax(v128.load(e), zero);
    const to = f64x2.pmax(v128.load(tensions), zero);
    const input = f64x2.add(from, f64x2.mul(share, f64x2.sub(to, from)));
    const fed = f64x2.add(
      f64x2.mul(a0, f64x2.add(input, v128.load(x2))),
      f64x2.mul(a1, v128.load(x1)),
    );
    const output = f64x2.add(fed, f64x2.add(f64x2.mul(b2, v128.load(y2)), f64x2.mul(b1, v128.load(y1))));
    v128.store(x2, input);
    v128.store(y, output);
    v128.store(low, f64x2.pmin(v128.load(low), output));
    v128.store(high, f64x2.pmax(v128.load(high), output));
    tensions += 16;
    x1 += 16;
    x2 += 16;
    y += 16;
    y1 += 16;
    y2 += 16;
    low += 16;
    high += 16;
  }
}
