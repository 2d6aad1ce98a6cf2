/**
 * Element sizes where the main line is to be cut. What comes off flies at the wave speed times its strain as far as the next thing
 * that holds it, past that, and jerks at it from the other side: the fold that runs along the tail takes as long as the tail is
 * in elements, and with too few of them most of its energy is lost on the way. A short tail between a cut and a connection
 * therefore has elements of its own size.
 */

import type { Problem } from "../problem.ts";
import type { SizeOf } from "./mesh.ts";

/** Elements on a tail on the standard mesh; more on a finer one in proportion. With half as many its jerk is a tenth too small. */
const TAIL_ELEMENTS = 60;
/** Smallest elements on a tail, as a share of the others [-]: they rule the step. */
const SMALLEST_ELEMENT_SHARE = 0.25;

/** Element sizes on the main line, by stretch; `standard` is what the standard mesh has where nothing is cut [m]. */
export function tailSizes(
  { cut, backup, span }: Problem,
  { size, standard }: { readonly size: number; readonly standard: number },
): SizeOf | undefined {
  if (!cut) return undefined;
  const held = [0, ...(backup?.connections ?? []).map(({ at }) => at), 1];
  const below = Math.max(...held.filter((at) => at < cut.at), 0);
  const above = Math.min(...held.filter((at) => at > cut.at), 1);
  return (from, to) => {
    const middle = 0.5 * (from + to);
    if (middle < below || middle > above) return size;
    const tail = (middle < cut.at ? cut.at - below : above - cut.at) * span;
    return Math.min(size, Math.max(SMALLEST_ELEMENT_SHARE * size, (tail / TAIL_ELEMENTS) * (size / standard)));
  };
}
