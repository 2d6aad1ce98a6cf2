/** A rope of given length hung between two points: straight when taut, otherwise a bow with the length it has. */
import type { Flat } from "./vector.ts";

/**
 * Writes `points` points (xyz) into `out`. The bow is a parabola in the vertical plane through both ends, deep enough
 * that its length is `length`; drawn, not simulated.
 */
export function hangRope(
  out: Float32Array,
  points: number,
  a: Flat,
  i: number,
  b: Flat,
  j: number,
  length: number,
): void {
  let low = 0;
  let high = length;
  if (ropeLength(a, i, b, j, 0, points) < length) {
    for (let k = 0; k < 24; k++) {
      const middle = 0.5 * (low + high);
      if (ropeLength(a, i, b, j, middle, points) < length) low = middle;
      else high = middle;
    }
  }
  const depth = low;
  for (let k = 0; k < points; k++) {
    const s = k / (points - 1);
    for (let c = 0; c < 3; c++) out[3 * k + c] = a[i + c]! + s * (b[j + c]! - a[i + c]!);
    out[3 * k + 2] = out[3 * k + 2]! - 4 * depth * s * (1 - s);
  }
}

function ropeLength(a: Flat, i: number, b: Flat, j: number, depth: number, points: number): number {
  const dx = (b[j]! - a[i]!) / (points - 1);
  const dy = (b[j + 1]! - a[i + 1]!) / (points - 1);
  const dz = b[j + 2]! - a[i + 2]!;
  const flat = dx * dx + dy * dy;
  let sum = 0;
  let z = 0;
  for (let k = 1; k < points; k++) {
    const s = k / (points - 1);
    const next = s * dz - 4 * depth * s * (1 - s);
    sum += Math.sqrt(flat + (next - z) * (next - z));
    z = next;
  }
  return sum;
}
