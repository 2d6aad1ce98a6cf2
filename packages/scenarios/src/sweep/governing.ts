/**
 * Which events a sweep draws: those that are worst at the ends and in the middle of its range, by single runs. An event that governs
 * only between them, and nowhere there, is not seen; the words say at how many places was looked.
 */
import { type WhatIf, whatIfKey } from "../events/registry.ts";
import type { GoodRun } from "../facts/runFacts.ts";
import type { SweepPoint } from "./sweepPoints.ts";
import type { Track } from "./tracks.ts";

/** The runs at one point that is looked at. */
export interface PlaceRuns {
  readonly point: SweepPoint;
  readonly runs: readonly { readonly event: WhatIf; readonly run: GoodRun }[];
}

/** Heights are compared over this much at least [m]. */
const LEAST_APART = 1;

/** The worst at every place, then those that come nearest to the worst anywhere, `most` in all. */
export function governingEvents(
  looks: readonly PlaceRuns[],
  tracks: readonly Track[],
  most: number,
): readonly WhatIf[] {
  const events = new Map<string, { readonly event: WhatIf; near: number; first: boolean }>();
  for (const { point, runs } of looks) {
    const values = runs.flatMap(({ event, run }) => {
      const each = tracks.flatMap((track) => track.of(run, event, point) ?? []);
      return each.length === 0 ? [] : [{ event, value: Math.max(...each) }];
    });
    if (values.length === 0) continue;
    const worst = Math.max(...values.map(({ value }) => value));
    const scale = Math.max(Math.abs(worst), LEAST_APART * (worst < 0 ? 1 : 0), Number.MIN_VALUE);
    for (const { event, value } of values) {
      const key = whatIfKey(event);
      const near = 1 - (worst - value) / scale;
      const known = events.get(key) ?? { event, near: Number.NEGATIVE_INFINITY, first: false };
      events.set(key, { event, near: Math.max(known.near, near), first: known.first || value === worst });
    }
  }
  return [...events.values()]
    .sort((a, b) => Number(b.first) - Number(a.first) || b.near - a.near)
    .slice(0, most)
    .map(({ event }) => event);
}

/** The corners of the range and its middle; of very few points all. */
export function lookedAt(points: readonly SweepPoint[]): readonly SweepPoint[] {
  const at = (values: readonly number[]) =>
    points.reduce((a, b) => (distance(b.values, values, points) < distance(a.values, values, points) ? b : a));
  const axes = points[0]!.values.map((_, k) => points.map(({ values }) => values[k]!));
  const ends = axes.map((all) => [Math.min(...all), Math.max(...all)] as const);
  const corners = ends.reduce<readonly (readonly number[])[]>(
    (all, [from, to]) =>
      all.flatMap((before) => [
        [...before, from],
        [...before, to],
      ]),
    [[]],
  );
  return [...new Set([...corners, ends.map(([from, to]) => (from + to) / 2)].map(at))];
}

function distance(a: readonly number[], b: readonly number[], points: readonly SweepPoint[]): number {
  return a.reduce((sum, x, k) => {
    const all = points.map(({ values }) => values[k]!);
    return sum + ((x - b[k]!) / (Math.max(...all) - Math.min(...all) || 1)) ** 2;
  }, 0);
}
