/** Moves of a ground profile by hand: a point stops at its neighbours, and the profile goes on covering the span. */
import { type GroundFault, groundFaults, groundHeight } from "@secondline/rig";
import { centimetre } from "../metres.ts";
import type { Point, Site } from "./side.ts";

/** Two points are at least so far apart along the span [m]. */
const LEAST_POINT_DISTANCE = 0.1;
/** More points than this nobody moves one by one. */
export const MOST_HANDLES = 24;

/** The first thing that is wrong with a profile, by the rig's own rule. */
export const groundFault = (points: readonly Point[], site: Site): GroundFault | undefined =>
  groundFaults(points, site)[0];

const inside = (value: number, [low, high]: readonly [number, number]) => Math.min(Math.max(value, low), high);

/** How far a point may go along the span: between its neighbours, and the outermost not in from the anchors [m]. */
export function pointReachOf(
  points: readonly Point[],
  index: number,
  { span }: Site,
): readonly [low: number, high: number] {
  const [before, after] = [points[index - 1], points[index + 1]];
  const low = before ? before[0] + LEAST_POINT_DISTANCE : -span;
  const high = after ? after[0] - LEAST_POINT_DISTANCE : 2 * span;
  if (!before) return [low, Math.min(0, high)];
  return after ? [low, high] : [Math.max(span, low), high];
}

/** Along the span and upwards [m]. */
export interface Steps {
  readonly x: number;
  readonly z: number;
}

/** The profile with one point where a hand has it, in steps; heights are not held back, see `groundFault`. */
export function withPoint(
  points: readonly Point[],
  index: number,
  [x, z]: Point,
  { site, step }: { readonly site: Site; readonly step: Steps },
): readonly Point[] {
  const round = (metres: number, by: number) => Math.round(metres / by) * by;
  const reach = pointReachOf(points, index, site);
  return points.with(index, [centimetre(inside(round(x, step.x), reach)), centimetre(round(z, step.z))]);
}

/**
 * The profile with one point more on its own line, so that the ground stays as it was: at `x`, else in the middle of its longest
 * stretch below the line. Undefined where a neighbour is too near.
 */
export function withPointAt(
  points: readonly Point[],
  site: Site,
  x: number = middleOfLongest(points, site),
): { readonly points: readonly Point[]; readonly index: number } | undefined {
  const at = centimetre(x);
  const after = points.findIndex(([px]) => px > at);
  if (after <= 0 || at - points[after - 1]![0] < LEAST_POINT_DISTANCE || points[after]![0] - at < LEAST_POINT_DISTANCE)
    return undefined;
  // Rounded upwards: no ground is written lower than it was.
  const height = Math.ceil(groundHeight({ ground: points }, at) * 100 - 1e-6) / 100 + 0;
  const added = points.toSpliced(after, 0, [at, height]);
  return groundFault(added, site) && !groundFault(points, site) ? undefined : { points: added, index: after };
}

function middleOfLongest(points: readonly Point[], { span }: Site): number {
  let [length, middle] = [0, span / 2];
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [Math.max(points[i - 1]![0], 0), Math.min(points[i]![0], span)];
    if (to - from > length) [length, middle] = [to - from, (from + to) / 2];
  }
  return middle;
}

/** The profile without one of its points; undefined where it would not cover the span any more. */
export function withoutPoint(points: readonly Point[], index: number, site: Site): readonly Point[] | undefined {
  const left = points.toSpliced(index, 1);
  return left.length >= 2 && left[0]![0] <= 0 && left.at(-1)![0] >= site.span ? left : undefined;
}

/** The profile drawn out or together along the span, so that it ends at another one; heights stay. */
export function stretched(points: readonly Point[], span: number): readonly Point[] {
  const last = points.at(-1)?.[0] ?? 0;
  return last > 0
    ? points.map(([x, z], i) => [i === points.length - 1 ? span : centimetre((x * span) / last), z])
    : points;
}
