/** Places on a line at which events are looked for. */
import type { Rig } from "@secondline/rig";

/** A person cannot fall closer to the anchor than this: the rock and the rigging are in the way [m]. */
const NEAREST_FALL_TO_ANCHOR = 3;
export const QUARTERS = [0.25, 0.5, 0.75] as const;

/** How far from an anchor the nearest fall is, as a fraction of the line [-]. */
export function nearEnd(rig: Rig): number {
  return Math.min(0.2, NEAREST_FALL_TO_ANCHOR / rig.span);
}

/** How far from the walker a failure beside the walker is, as a fraction of the line [-]. */
const BESIDE_WALKER_SHARE = 0.05;

/** Beside a walker, on the side of the farther end [-]. */
export const besideWalker = (at: number): number => (at <= 0.5 ? at + BESIDE_WALKER_SHARE : at - BESIDE_WALKER_SHARE);

/** So many places along the line are looked at, from the nearest fall at A to that at B [-]. */
const PLACE_COUNT = 13;

/** Evenly along the line, and one more beside either end, where loads differ most from one place to the next. */
export function manyPlaces(rig: Rig): readonly number[] {
  const near = nearEnd(rig);
  const place = (i: number) => Number((near + ((1 - 2 * near) * i) / (PLACE_COUNT - 1)).toFixed(4));
  const even = Array.from({ length: PLACE_COUNT }, (_, i) => place(i));
  return [even[0]!, place(0.5), ...even.slice(1, -1), place(PLACE_COUNT - 1.5), even[PLACE_COUNT - 1]!];
}

/** Middles of the bays between each end and its nearest connection [-]. */
export function endBays(rig: Rig): { readonly A?: number; readonly B?: number } {
  const at = (rig.backup?.connections ?? []).filter((part) => part.kind === "connection").map((part) => part.at);
  if (at.length === 0) return {};
  return { A: Math.min(...at) / 2, B: (1 + Math.max(...at)) / 2 };
}
