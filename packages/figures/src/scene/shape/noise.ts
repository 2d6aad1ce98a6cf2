/** Value noise from an integer hash: the same rock on every machine and every visit. */

function hash(x: number, y: number): number {
  let h = Math.imul(x | 0, 374761393) + Math.imul(y | 0, 668265263);
  h = Math.imul(h ^ (h >>> 13), 1274126177);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967295;
}

/** Smooth noise in 0..1 with features of about one unit. */
export function noise(x: number, y: number): number {
  const ix = Math.floor(x);
  const iy = Math.floor(y);
  const u = ease(x - ix);
  const v = ease(y - iy);
  const low = hash(ix, iy) * (1 - u) + hash(ix + 1, iy) * u;
  const high = hash(ix, iy + 1) * (1 - u) + hash(ix + 1, iy + 1) * u;
  return low * (1 - v) + high * v;
}

/** Noise of three octaves about zero, in −1..1. */
export function roughness(x: number, y: number): number {
  const sum = noise(x, y) + 0.5 * noise(2.03 * x + 17, 2.03 * y) + 0.25 * noise(4.1 * x, 4.1 * y + 31);
  return (2 * sum) / 1.75 - 1;
}

function ease(t: number): number {
  return t * t * t * (t * (6 * t - 15) + 10);
}

export function smoothstep(from: number, to: number, value: number): number {
  const t = Math.min(Math.max((value - from) / (to - from), 0), 1);
  return t * t * (3 - 2 * t);
}
