/**
 * Where a line's nodes lie. Nodes fall on every place that matters (ends of sections, connections, the walker, a cut), and
 * the stretches between are divided evenly into elements of about the wanted size.
 */

/** How finely the lines are cut into elements; `buildModel` has the lengths. */
export type Accuracy = "quick" | "standard" | "fine";

/** Places closer together than this share of the element size become one node: a smaller element would rule the time step. */
const CLOSEST_PLACES_SHARE = 0.4;
/**
 * The walker may stand this close to an anchor, as a share of the element size [-]: on the anchor itself there is no sag. The end
 * node has an even element's mass (`line.ts`), so that the step gets shorter by the root of that ratio only.
 */
const CLOSEST_TO_ANCHOR_SHARE = 0.1;

export interface Mesh {
  /** Fraction of natural length of every node, rising; a place in `split` appears twice in a row. */
  readonly fractions: Float64Array;
  /** Index of the node at a place that was asked for; at a split, the first of the two nodes. */
  nodeAt(fraction: number): number;
}

/**
 * A place that wants a node. The lower the rank, the more exactly it is met when two are too close; rank 0 is met in any case, but for
 * a hand's breadth beside an anchor.
 */
export interface NodePlace {
  readonly at: number;
  readonly rank: number;
}

/** Wanted element size on the stretch between two places, as fractions of the line [m]. */
export type SizeOf = (from: number, to: number) => number;

/**
 * @param naturalLength of the line [m]
 * @param size wanted element size; places are told apart by it [m]
 * @param places that want a node, as fractions 0..1
 * @param split fraction at which the line may be severed: two nodes there, held together until it is; undefined: none.
 *   Ends are severed by letting go of the anchor and need no second node.
 * @param sizeOf element size of a stretch where it is not the same everywhere
 */
export function buildMesh(
  naturalLength: number,
  size: number,
  places: readonly NodePlace[],
  split?: number,
  sizeOf: SizeOf = () => size,
): Mesh {
  const kept = keepApart(places, (CLOSEST_PLACES_SHARE * size) / naturalLength);
  const splitAt = split === undefined ? undefined : nearest(kept, split);
  const fractions: number[] = [0];
  for (let k = 0; k + 1 < kept.length; k++) {
    const [from, to] = [kept[k]!, kept[k + 1]!];
    const count = Math.max(1, Math.floor(((to - from) * naturalLength) / sizeOf(from, to) + 0.3));
    for (let i = 1; i < count; i++) fractions.push(from + ((to - from) * i) / count);
    fractions.push(to);
    if (to === splitAt && to < 1) fractions.push(to);
  }
  const all = Float64Array.from(fractions);
  return { fractions: all, nodeAt: (fraction) => firstNearest(all, fraction) };
}

/** Ends always; then places by rank, dropping those too near one already kept. */
function keepApart(places: readonly NodePlace[], closest: number): number[] {
  const kept = [0, 1];
  for (const place of [...places].sort((a, b) => a.rank - b.rank || a.at - b.at)) {
    if (place.rank === 0) {
      const nearest = (closest * CLOSEST_TO_ANCHOR_SHARE) / CLOSEST_PLACES_SHARE;
      kept.push(Math.min(Math.max(place.at, nearest), 1 - nearest));
    } else if (kept.every((other) => Math.abs(other - place.at) >= closest)) kept.push(place.at);
  }
  return kept.sort((a, b) => a - b);
}

function nearest(sorted: readonly number[], value: number): number {
  return sorted.reduce((best, x) => (Math.abs(x - value) < Math.abs(best - value) ? x : best));
}

function firstNearest(fractions: Float64Array, value: number): number {
  let best = 0;
  for (let i = 1; i < fractions.length; i++) {
    if (Math.abs(fractions[i]! - value) < Math.abs(fractions[best]! - value)) best = i;
  }
  return best;
}
