/** Maxima of smooth functions of one and two variables. */

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Largest value of a unimodal function on [from, to], by golden section. */
export function maximiseOne(
  f: (x: number) => number,
  from: number,
  to: number,
): { readonly x: number; readonly value: number } {
  let [a, b] = [from, to];
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [fc, fd] = [f(c), f(d)];
  // Each step keeps 0.618 of the bracket: 48 of them leave 1e-10 of it, and the value errs by the square of that.
  for (let i = 0; i < 48; i++) {
    if (fc > fd) {
      [b, d, fd] = [d, c, fc];
      c = b - GOLDEN * (b - a);
      fc = f(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + GOLDEN * (b - a);
      fd = f(d);
    }
  }
  return fc > fd ? { x: c, value: fc } : { x: d, value: fd };
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
    const move = uphill(gradient, curvature, steps);
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
    // No higher point in the direction uphill: at the maximum to within rounding.
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

function uphill(
  [gx, gy]: readonly [number, number],
  [xx, xy, yy]: readonly [number, number, number],
  steps: readonly [number, number],
): [number, number] {
  const determinant = xx * yy - xy * xy;
  if (xx < 0 && determinant > 0) return [-(yy * gx - xy * gy) / determinant, -(xx * gy - xy * gx) / determinant];
  const length = Math.hypot(gx * steps[0], gy * steps[1]) || 1;
  return [(gx * steps[0] ** 2) / length, (gy * steps[1] ** 2) / length];
}
