/**
 * The section through the gap under the line: the rig's ground profile, a rock face up to each anchor where the profile
 * ends lower, and a plateau behind each anchor. x along the span, z up, anchor A at (0, 0) [m].
 */
export interface Gap {
  readonly x: Float64Array;
  readonly z: Float64Array;
  readonly span: number;
  readonly rise: number;
  /** Height of the rock at either anchor [m]. */
  readonly edgeA: number;
  readonly edgeB: number;
  /** Lowest point [m]. */
  readonly floor: number;
  /** False: the rig gives no ground, and the floor drawn is only scenery. */
  readonly known: boolean;
}

/** Rock below the master point, so that slings and legs lie on it [m]. */
const EDGE_DROP = 0.3;
/** Least length of the plateau drawn behind an anchor [m]. */
const LEAST_PLATEAU_LENGTH = 40;

type Point = readonly [x: number, z: number];

export function gapSection(ground: readonly Point[], span: number, rise: number): Gap {
  const known = ground.length >= 2;
  const inner = known ? ground : scenery(span, rise);
  const first = inner[0]!;
  const last = inner[inner.length - 1]!;
  const edgeA = Math.max(first[1], -EDGE_DROP);
  const edgeB = Math.max(last[1], rise - EDGE_DROP);
  const reach = Math.max(LEAST_PLATEAU_LENGTH, span);
  const left: Point[] = [
    [-reach, edgeA + 0.06 * reach],
    [-0.35 * reach, edgeA + 0.035 * reach],
    [-6, edgeA + 0.25],
    [-2, edgeA],
  ];
  const right: Point[] = left.map(([x, z]) => [span - x, z - edgeA + edgeB] as const).reverse();
  if (first[1] < edgeA - 0.05) left.push([Math.min(first[0], 0) - 0.12, edgeA - 0.02]);
  if (last[1] < edgeB - 0.05) right.unshift([Math.max(last[0], span) + 0.12, edgeB - 0.02]);
  const points = [...left, ...inner, ...right];
  const x = Float64Array.from(points, (p) => p[0]);
  const z = Float64Array.from(points, (p) => p[1]);
  const floor = inner.reduce((least, p) => Math.min(least, p[1]), Infinity);
  return { x, z, span, rise, edgeA, edgeB, floor, known };
}

/** Distance between contour lines [m]. */
export function contourInterval({ edgeA, edgeB, floor }: Gap): number {
  const depth = Math.max(edgeA, edgeB) - floor;
  return depth > 120 ? 5 : depth > 45 ? 2 : 1;
}

/** Haze: distance where it begins and ends, height where it begins and ends [m]. */
export function hazeOf({ span, edgeA, edgeB, floor }: Gap): readonly [number, number, number, number] {
  const top = Math.min(edgeA, edgeB) - 2;
  const bottom = Math.min(floor, top - 10);
  return [0.9 * span + 30, 4.5 * span + 160, top, bottom - 0.15 * (top - bottom)];
}

/** Height of the section at x; the upper one where the rock stands upright [m]. */
export function groundAt(gap: Gap, x: number): number {
  let height = -Infinity;
  for (let i = 1; i < gap.x.length; i++) {
    const x0 = gap.x[i - 1]!;
    const x1 = gap.x[i]!;
    if (x < Math.min(x0, x1) || x > Math.max(x0, x1)) continue;
    const share = x1 === x0 ? 1 : (x - x0) / (x1 - x0);
    const z = x1 === x0 ? Math.max(gap.z[i - 1]!, gap.z[i]!) : gap.z[i - 1]! + share * (gap.z[i]! - gap.z[i - 1]!);
    height = Math.max(height, z);
  }
  if (height !== -Infinity) return height;
  return x < gap.x[0]! ? gap.z[0]! : gap.z[gap.z.length - 1]!;
}

/** Walls that go down into haze, for a rig without a ground profile. */
function scenery(span: number, rise: number): Point[] {
  const depth = 20 + 0.6 * span;
  return [
    [0, -EDGE_DROP],
    [0.05 * span, -0.5 * depth],
    [0.15 * span, -0.8 * depth],
    [0.45 * span, -depth],
    [0.85 * span, rise - 0.8 * depth],
    [0.95 * span, rise - 0.5 * depth],
    [span, rise - EDGE_DROP],
  ];
}
