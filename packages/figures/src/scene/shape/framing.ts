/** The place of a camera from which given points just fill its picture. */

/** xyz [m] */
export type Vec3 = readonly [number, number, number];
export interface View {
  readonly position: Vec3;
  readonly target: Vec3;
}

/** Shares of the picture kept free of the points: left, right, top, bottom [-]. */
export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The nearest view in direction `towards` (from the camera into the scene) with all `points` (xyz) inside the margins.
 * `fovY` is the whole vertical angle [rad]; z is up; `towards` may not be vertical.
 */
export function frameView(points: Flat3, towards: Vec3, fovY: number, aspect: number, margins: Margins): View {
  const forward = normalize(towards);
  const right = normalize([forward[1], -forward[0], 0]);
  const up = cross(right, forward);
  const tanY = Math.tan(fovY / 2);
  const tanX = tanY * aspect;
  const across = frameAxis(points, right, forward, tanX * (1 - 2 * margins.left), tanX * (1 - 2 * margins.right));
  const upright = frameAxis(points, up, forward, tanY * (1 - 2 * margins.bottom), tanY * (1 - 2 * margins.top));
  // If the camera stands farther back than an axis needs, the spare room is shared between the two sides.
  const back = Math.min(across.back, upright.back);
  const x = across.place(back);
  const y = upright.place(back);
  const position = combine(right, x, up, y, forward, back);
  const depth = centreAlong(points, forward) - back || 1;
  const target = combine(right, x, up, y, forward, back + Math.max(depth, 0.5));
  return { position, target };
}

type Flat3 = ArrayLike<number>;

/** Furthest place along `forward` from which both sides of one axis fit, and where to stand on that axis from a place. */
function frameAxis(points: Flat3, axis: Vec3, forward: Vec3, tanLow: number, tanHigh: number) {
  let high = -Infinity;
  let low = -Infinity;
  for (let i = 0; i + 2 < points.length; i += 3) {
    const a = along(points, i, axis);
    const f = along(points, i, forward);
    high = Math.max(high, a - f * tanHigh);
    low = Math.max(low, -a - f * tanLow);
  }
  // Needs: a − p ≤ (f − back)·tanHigh and p − a ≤ (f − back)·tanLow for every point.
  const back = -(high + low) / (tanHigh + tanLow);
  return {
    back,
    place: (from: number): number => {
      const least = high + from * tanHigh;
      const most = -(low + from * tanLow);
      return 0.5 * (least + most);
    },
  };
}

function centreAlong(points: Flat3, axis: Vec3): number {
  let least = Infinity;
  let most = -Infinity;
  for (let i = 0; i + 2 < points.length; i += 3) {
    const a = along(points, i, axis);
    least = Math.min(least, a);
    most = Math.max(most, a);
  }
  return 0.5 * (least + most);
}

function along(points: Flat3, i: number, axis: Vec3): number {
  return points[i]! * axis[0] + points[i + 1]! * axis[1] + points[i + 2]! * axis[2];
}

function combine(a: Vec3, x: number, b: Vec3, y: number, c: Vec3, z: number): Vec3 {
  return [a[0] * x + b[0] * y + c[0] * z, a[1] * x + b[1] * y + c[1] * z, a[2] * x + b[2] * y + c[2] * z];
}

function cross(a: Vec3, b: Vec3): Vec3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function normalize(v: Vec3): Vec3 {
  const length = Math.hypot(v[0], v[1], v[2]) || 1;
  return [v[0] / length, v[1] / length, v[2] / length];
}
