/** Maxima of smooth functions of one and two variables. */

/** Share that a step of the golden-section search leaves of the interval [-]. */
const GOLDEN_SECTION = (Math.sqrt(5) - 1) / 2;

/** Share of the bracket to which a maximum is found; the value of the maximum errs by the square of this [-]. */
const BRACKET_SHARE = 1e-8;

/**
 * Largest value of a unimodal function on [from, to]: by parabolas, and by golden sections where parabolas fail (R. P. Brent,
 * ch. 5).
 */
export function maximiseOne(
  f: (x: number) => number,
  from: number,
  to: number,
): { readonly x: number; readonly value: number } {
  const tolerance = BRACKET_SHARE * (to - from);
  let [a, b] = [from, to];
  let x = a + (1 - GOLDEN_SECTION) * (b - a);
  let [w, v] = [x, x];
  let fx = f(x);
  let [fw, fv] = [fx, fx];
  let [step, last] = [0, 0];
  for (let i = 0; i < 100; i++) {
    const middle = (a + b) / 2;
    if (Math.abs(x - middle) <= 2 * tolerance - (b - a) / 2) break;
    const move = parabolaStep(x, w, v, fx, fw, fv);
    if (Math.abs(last) > tolerance && Math.abs(move) < Math.abs(last / 2) && x + move > a && x + move < b) {
      [last, step] = [step, move];
      if (x + step - a < 2 * tolerance || b - x - step < 2 * tolerance) step = x < middle ? tolerance : -tolerance;
    } else {
      last = x < middle ? b - x : a - x;
      step = (1 - GOLDEN_SECTION) * last;
    }
    const u = x + (Math.abs(step) >= tolerance ? step : Math.sign(step) * tolerance);
    const fu = f(u);
    if (fu >= fx) {
      if (u < x) b = x;
      else a = x;
      [v, fv, w, fw, x, fx] = [w, fw, x, fx, u, fu];
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu >= fw || w === x) [v, fv, w, fw] = [w, fw, u, fu];
      else if (fu >= fv || v === x || v === w) [v, fv] = [u, fu];
    }
  }
  return { x, value: fx };
}

/** Distance from x to the top of the parabola through three points; NaN if it has no top. */
function parabolaStep(x: number, w: number, v: number, fx: number, fw: number, fv: number): number {
  const [r, q] = [(x - w) * (fx - fv), (x - v) * (fx - fw)];
  const p = (x - v) * q - (x - w) * r;
  return -p / (2 * (q - r));
}

export interface Maximum {
  readonly x: readonly [number, number];
  readonly value: number;
  /** Second derivatives at the maximum: xx, xy, yy. */
  readonly curvature: readonly [number, number, number];
  readonly converged: boolean;
}

/**
 * Newton's method with derivatives by central differences, damped by halving until the function rises and turned uphill
 * where it is not concave. `steps`: natural length of each variable.
 */
export function maximiseTwo(
  f: (x: readonly [number, number]) => number,
  start: readonly [number, number],
  steps: readonly [number, number],
): Maximum {
  let x: readonly [number, number] = start;
  let value = f(x);
  for (let i = 0; i < 200; i++) {
    const { gradient, curvature } = derivatives(f, x, steps);
    const move = uphillStep(gradient, curvature, steps);
    const size = Math.max(Math.abs(move[0] / steps[0]), Math.abs(move[1] / steps[1]));
    if (size < 1e-9) return { x, value, curvature, converged: true };
    let share = Math.min(1, 2 / size);
    let next = x;
    let risen = -Infinity;
    while (share > 1e-10) {
      next = [x[0] + share * move[0], x[1] + share * move[1]];
      risen = f(next);
      if (risen > value) break;
      share /= 2;
    }
    // There is no higher point uphill, so this is the maximum to within rounding.
    if (!(risen > value)) return { x, value, curvature, converged: size < 1e-3 };
    [x, value] = [next, risen];
  }
  return { x, value, curvature: derivatives(f, x, steps).curvature, converged: false };
}

function derivatives(
  f: (x: readonly [number, number]) => number,
  x: readonly [number, number],
  steps: readonly [number, number],
) {
  const [h, k] = [1e-4 * steps[0], 1e-4 * steps[1]];
  const at = (i: number, j: number) => f([x[0] + i * h, x[1] + j * k]);
  const [middle, east, west, north, south] = [at(0, 0), at(1, 0), at(-1, 0), at(0, 1), at(0, -1)];
  return {
    gradient: [(east - west) / (2 * h), (north - south) / (2 * k)] as const,
    curvature: [
      (east - 2 * middle + west) / (h * h),
      (at(1, 1) - at(1, -1) - at(-1, 1) + at(-1, -1)) / (4 * h * k),
      (north - 2 * middle + south) / (k * k),
    ] as const,
  };
}

function uphillStep(
  [gx, gy]: readonly [number, number],
  [xx, xy, yy]: readonly [number, number, number],
  steps: readonly [number, number],
): [number, number] {
  const determinant = xx * yy - xy * xy;
  if (xx < 0 && determinant > 0) return [-(yy * gx - xy * gy) / determinant, -(xx * gy - xy * gx) / determinant];
  const length = Math.hypot(gx * steps[0], gy * steps[1]) || 1;
  return [(gx * steps[0] ** 2) / length, (gy * steps[1] ** 2) / length];
}
