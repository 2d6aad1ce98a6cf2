/**
 * The slow-pull curve T_eq(ε): a straight line, or the monotone cubic of Fritsch & Carlson (SIAM J. Numer. Anal. 17, 1980)
 * through a table, with three-point end slopes, continued straight beyond the last point.
 *
 * Each interval is kept as a cubic of the local strain u = ε − start that is zero at u = 0, so that
 * T_eq(ε) = Σ cubic_k(clamp(ε − start_k, 0, width_k)) + endSlope · max(0, ε − end): no search and no branch in the kernel.
 */
import type { CurvePoint } from "../problem.ts";

export interface TensionCurve {
  /** Per interval: start strain [-], width [-], and c1, c2, c3 of c1·u + c2·u² + c3·u³ [N]. Five numbers each. */
  readonly cubics: Float64Array;
  /** Strain where the straight continuation begins [-]. */
  readonly end: number;
  /** Slope of the continuation [N]. */
  readonly endSlope: number;
  /** Largest slope anywhere, tangent stiffness for the step limit [N]. */
  readonly maxSlope: number;
}

/** Builds the curve; points must start at (0, 0), rise in strain and not fall in tension (checked by `readProblem`). */
export function tensionCurve(points: readonly CurvePoint[]): TensionCurve {
  if (points.length === 2) {
    const slope = points[1]![1] / points[1]![0];
    return { cubics: new Float64Array(0), end: 0, endSlope: slope, maxSlope: slope };
  }
  const slopes = monotoneSlopes(points);
  const cubics = new Float64Array(5 * (points.length - 1));
  let maxSlope = slopes.at(-1)!;
  for (let k = 0; k + 1 < points.length; k++) {
    const [x0, t0] = points[k]!;
    const [x1, t1] = points[k + 1]!;
    const width = x1 - x0;
    const secant = (t1 - t0) / width;
    const [m0, m1] = [slopes[k]!, slopes[k + 1]!];
    const c2 = (3 * secant - 2 * m0 - m1) / width;
    const c3 = (m0 + m1 - 2 * secant) / (width * width);
    cubics.set([x0, width, m0, c2, c3], 5 * k);
    maxSlope = Math.max(maxSlope, m0, m1, largestInside(m0, c2, c3, width));
  }
  return { cubics, end: points.at(-1)![0], endSlope: slopes.at(-1)!, maxSlope };
}

/** Slope at the vertex of the derivative parabola, when it lies inside the interval. */
function largestInside(c1: number, c2: number, c3: number, width: number): number {
  const vertex = -c2 / (3 * c3);
  return c3 < 0 && vertex > 0 && vertex < width ? c1 + vertex * (2 * c2 + 3 * c3 * vertex) : 0;
}

/** Fritsch–Carlson slopes: three-point inside and at the ends, then limited so that every cubic is monotone. */
function monotoneSlopes(points: readonly CurvePoint[]): number[] {
  const count = points.length;
  const h = points.slice(1).map(([x], k) => x - points[k]![0]);
  const d = points.slice(1).map(([, t], k) => (t - points[k]![1]) / h[k]!);
  const slopes = new Array<number>(count);
  for (let k = 1; k < count - 1; k++) {
    const [left, right] = [d[k - 1]!, d[k]!];
    // Weighted harmonic mean (Fritsch & Butland's form of the limiter): zero where the secants change sign.
    const [w1, w2] = [2 * h[k]! + h[k - 1]!, h[k]! + 2 * h[k - 1]!];
    slopes[k] = left * right <= 0 ? 0 : (w1 + w2) / (w1 / left + w2 / right);
  }
  slopes[0] = endSlope(h[0]!, h[1]!, d[0]!, d[1]!);
  slopes[count - 1] = endSlope(h[count - 2]!, h[count - 3]!, d[count - 2]!, d[count - 3]!);
  return slopes;
}

/** Three-point end slope, kept monotone. */
function endSlope(h0: number, h1: number, d0: number, d1: number): number {
  const slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (slope * d0 <= 0) return 0;
  return d0 * d1 <= 0 && Math.abs(slope) > 3 * Math.abs(d0) ? 3 * d0 : slope;
}

/** T_eq at a strain; zero for ε ≤ 0 [N]. */
export function tensionAt(curve: TensionCurve, strain: number): number {
  if (strain <= 0) return 0;
  const { cubics } = curve;
  let tension = curve.endSlope * Math.max(0, strain - curve.end);
  for (let k = 0; k < cubics.length; k += 5) {
    const u = Math.min(Math.max(strain - cubics[k]!, 0), cubics[k + 1]!);
    tension += u * (cubics[k + 2]! + u * (cubics[k + 3]! + u * cubics[k + 4]!));
  }
  return tension;
}

/** Tangent stiffness dT_eq/dε; zero for ε < 0 [N]. */
export function slopeAt(curve: TensionCurve, strain: number): number {
  if (strain < 0) return 0;
  if (strain >= curve.end) return curve.endSlope;
  const { cubics } = curve;
  for (let k = 0; k < cubics.length; k += 5) {
    const u = strain - cubics[k]!;
    if (u < cubics[k + 1]!) return cubics[k + 2]! + u * (2 * cubics[k + 3]! + 3 * u * cubics[k + 4]!);
  }
  return curve.endSlope;
}

/** ∫₀^ε T_eq dε, energy per natural length [J/m]. */
export function energyAt(curve: TensionCurve, strain: number): number {
  if (strain <= 0) return 0;
  const { cubics } = curve;
  const beyond = Math.max(0, strain - curve.end);
  let energy = 0.5 * curve.endSlope * beyond * beyond;
  for (let k = 0; k < cubics.length; k += 5) {
    const width = cubics[k + 1]!;
    const inside = strain - cubics[k]!;
    if (inside <= 0) continue;
    const u = Math.min(inside, width);
    const [c1, c2, c3] = [cubics[k + 2]!, cubics[k + 3]!, cubics[k + 4]!];
    energy += u * u * (c1 / 2 + u * (c2 / 3 + (u * c3) / 4));
    // Past this interval its tension stays on at the value it reached.
    if (inside > width) energy += (inside - width) * width * (c1 + width * (c2 + width * c3));
  }
  return energy;
}

/**
 * Strain at which the slow-pull tension is reached; tension ≥ 0, curve strictly rising somewhere below it [-].
 * Newton's method inside a bracket that every step narrows, with a bisection where Newton would leave it.
 */
export function strainAt(curve: TensionCurve, tension: number): number {
  if (tension <= 0) return 0;
  if (curve.cubics.length === 0) return tension / curve.endSlope;
  let low = 0;
  let high = curve.end + tension / curve.endSlope + 1e-12;
  while (tensionAt(curve, high) < tension) high *= 2;
  let strain = Math.min(curve.end, 0.5 * high);
  for (let i = 0; i < 200; i++) {
    const over = tensionAt(curve, strain) - tension;
    if (over < 0) low = strain;
    else high = strain;
    let next = strain - over / slopeAt(curve, strain);
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    if (next === low || next === high || Math.abs(next - strain) <= 1e-16 * strain) break;
    strain = next;
  }
  return strain;
}

/**
 * What branches hold too much where curve and branches together would push, T_eq + Σq < 0, but the line carries nothing: they were
 * stretched the other way without work, and will follow the next pull as far without work. Per natural length [J/m]; `pull` is
 * Σq, `stiffness` ΣE [N].
 */
export function overdrawn(curve: TensionCurve, strain: number, pull: number, stiffness: number): number {
  const push = tensionAt(curve, strain) + pull;
  return push < 0 ? (0.5 * push * push) / (slopeAt(curve, strain) + stiffness) : 0;
}
