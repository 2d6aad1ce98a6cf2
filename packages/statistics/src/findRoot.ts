/** Root of a continuous function between two points of opposite sign: bisection sped up by secants. */

/**
 * Brent's method (R. P. Brent, *Algorithms for Minimization without Derivatives*, 1973, ch. 4). Throws when the signs
 * at the ends agree: that is a programmer's error.
 */
export function findRoot(f: (x: number) => number, from: number, to: number, tolerance = 0): number {
  let [a, b] = [from, to];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new Error(`no change of sign between ${from} (${fa}) and ${to} (${fb})`);
  let [c, fc] = [a, fa];
  let [step, last] = [b - a, b - a];
  for (let i = 0; i < 300; i++) {
    if (fb * fc > 0) {
      [c, fc] = [a, fa];
      step = last = b - a;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2 + Number.MIN_VALUE;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) return b;
    [step, last] = nextStep(a, b, c, fa, fb, fc, half, near, step, last);
    [a, fa] = [b, fb];
    b += Math.abs(step) > near ? step : Math.sign(half) * near;
    fb = f(b);
  }
  return b;
}

/** Interpolated step when it is safe, else half the bracket. */
function nextStep(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
  half: number,
  near: number,
  step: number,
  last: number,
): [step: number, last: number] {
  if (Math.abs(last) < near || Math.abs(fa) <= Math.abs(fb)) return [half, half];
  const s = fb / fa;
  let p: number;
  let q: number;
  if (a === c) {
    p = 2 * half * s;
    q = 1 - s;
  } else {
    const [r, t] = [fb / fc, fa / fc];
    p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
    q = (t - 1) * (r - 1) * (s - 1);
  }
  if (p > 0) q = -q;
  else p = -p;
  if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(last * q))) return [p / q, step];
  return [half, half];
}

/** Moves `end` away from `start`, doubling the distance, until f changes sign; then finds the root between. */
export function findRootOutward(
  f: (x: number) => number,
  start: number,
  firstStep: number,
  steps = 60,
): number | undefined {
  const sign = Math.sign(f(start));
  if (sign === 0) return start;
  let [near, step] = [start, firstStep];
  for (let i = 0; i < steps; i++) {
    const far = near + step;
    const value = f(far);
    if (!Number.isFinite(value)) return undefined;
    if (Math.sign(value) !== sign) return findRoot(f, near, far, Math.abs(firstStep) * 1e-9);
    near = far;
    step *= 2;
  }
  return undefined;
}
