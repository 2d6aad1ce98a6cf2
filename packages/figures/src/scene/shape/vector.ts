/** Three-vectors in flat arrays, written in place. */
export type Flat = Float32Array | Float64Array;

export function set3(out: Flat, at: number, x: number, y: number, z: number): void {
  out[at] = x;
  out[at + 1] = y;
  out[at + 2] = z;
}

/** out = a + s·b */
export function add3(out: Flat, o: number, a: Flat, i: number, b: Flat, j: number, s: number): void {
  out[o] = a[i]! + s * b[j]!;
  out[o + 1] = a[i + 1]! + s * b[j + 1]!;
  out[o + 2] = a[i + 2]! + s * b[j + 2]!;
}

export function dot3(a: Flat, i: number, b: Flat, j: number): number {
  return a[i]! * b[j]! + a[i + 1]! * b[j + 1]! + a[i + 2]! * b[j + 2]!;
}

export function length3(a: Flat, i: number): number {
  return Math.sqrt(dot3(a, i, a, i));
}

/** Scales to length one; a vector of no length becomes z. */
export function unit3(out: Flat, at: number): void {
  const length = length3(out, at);
  if (length < 1e-9) set3(out, at, 0, 0, 1);
  else for (let c = 0; c < 3; c++) out[at + c] = out[at + c]! / length;
}

/** out = a × b; out may not be a or b. */
export function cross3(out: Flat, o: number, a: Flat, i: number, b: Flat, j: number): void {
  out[o] = a[i + 1]! * b[j + 2]! - a[i + 2]! * b[j + 1]!;
  out[o + 1] = a[i + 2]! * b[j]! - a[i]! * b[j + 2]!;
  out[o + 2] = a[i]! * b[j + 1]! - a[i + 1]! * b[j]!;
}

/** Removes from a its part along the unit vector b, and scales the rest to length one. */
export function square3(a: Flat, i: number, b: Flat, j: number): void {
  add3(a, i, a, i, b, j, -dot3(a, i, b, j));
  unit3(a, i);
}
