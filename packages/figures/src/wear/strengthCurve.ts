/** Strength along a webbing as a step curve, and the part of the curve that lies below the required strength. */
import type { StrengthZone, WebbingState } from "@secondline/strength";
import type { Scale } from "../scale.ts";
import type { Box } from "../shapes/shape.ts";

/** A short mark must not vanish between two pixels [px]. */
const LEAST_MARK_WIDTH = 3;

type Stretch = Pick<StrengthZone, "from" | "to">;

/** Left and right end of a zone; one too short to see is drawn a little wider than it is [px]. */
function edgesOf({ from, to }: Stretch, x: Scale): readonly [left: number, right: number] {
  const [left, right] = [x.px(from), x.px(to)];
  const more = Math.max(0, LEAST_MARK_WIDTH - (right - left)) / 2;
  return [left - more, right + more];
}

/** The path of the central values, or of the 5 % values. */
export const strengthPath = (
  zones: readonly StrengthZone[],
  value: "strength" | "strength5",
  x: Scale,
  y: Scale,
): string =>
  zones
    .map((zone, i) => {
      const [left, right] = edgesOf(zone, x);
      return `${i === 0 ? "M" : "L"}${left.toFixed(1)} ${y.px(zone[value]).toFixed(1)}H${right.toFixed(1)}`;
    })
    .join("");

/**
 * Areas inside of the loaded span where the 5 % value lies below the required strength; undefined if there are none [N], [px].
 */
export function shortfall(
  zone: StrengthZone,
  needed: number,
  placement: WebbingState["placement"],
  x: Scale,
  y: Scale,
): Box | undefined {
  if (zone.strength5 >= needed || !placement) return undefined;
  const inSpan = { from: Math.max(zone.from, placement.from), to: Math.min(zone.to, placement.to) };
  const [left, right] = edgesOf(inSpan, x);
  const [top, bottom] = [y.px(needed), y.px(zone.strength5)];
  return { x: left, y: top, width: right - left, height: bottom - top };
}
