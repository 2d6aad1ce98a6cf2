/** Where a ground profile cannot be: it may touch the line at the anchors, and nowhere between. */
import { chordHeight, groundHeight } from "./geometry.ts";

/** A profile that ends so near to anchor B ends there: its places are told to the centimetre, and the span may have more digits [m]. */
export const GROUND_END_REACH = 0.01;

/** At `x` the ground is too high: it must stay below `limit`, and at an anchor may reach it [m]. */
export interface GroundFault {
  readonly kind: "line" | "anchorA" | "anchorB";
  /** The point that is too high. */
  readonly index: number;
  readonly x: number;
  readonly limit: number;
}

/** All faults, those between the anchors first. `points`: distance and height, from A to B [m]; a profile of none has no fault. */
export function groundFaults(
  points: readonly (readonly [x: number, z: number])[],
  site: { readonly span: number; readonly rise: number },
): readonly GroundFault[] {
  if (points.length === 0) return [];
  const ends = (index: number) => index === points.length - 1 && points[index]![0] >= site.span - GROUND_END_REACH;
  const between = points.flatMap(([x, z], index): GroundFault[] => {
    const limit = chordHeight(site, x);
    return x > 0 && x < site.span && !ends(index) && z >= limit ? [{ kind: "line", index, x, limit }] : [];
  });
  const atAnchor = (kind: "anchorA" | "anchorB", x: number, index: number): readonly GroundFault[] => {
    const limit = chordHeight(site, x);
    return index >= 0 && groundHeight({ ground: points }, x) > limit + 1e-9 ? [{ kind, index, x, limit }] : [];
  };
  return [
    ...between,
    ...atAnchor(
      "anchorA",
      0,
      points.findLastIndex(([x]) => x <= 0),
    ),
    ...atAnchor(
      "anchorB",
      site.span,
      points.findIndex(([x]) => x >= site.span - GROUND_END_REACH),
    ),
  ];
}
