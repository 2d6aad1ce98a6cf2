/** A bolt: rock and placement, and the direction of the pull on it. */
import { boltDirectionFactors, worstLegAngle } from "../../derating/boltDirection.ts";
import { boltPlacement } from "../../derating/make.ts";
import { unusedOnMetal } from "../unusedCondition.ts";
import type { AnchorKind, AnchorPlace } from "./anchorKind.ts";

export const bolt: AnchorKind = {
  kind: "bolt",
  factors: (place) => [boltPlacement(), ...boltDirectionFactors(angle(place), `${place.at}.pullAngle`)],
  unused: ({ condition }) => unusedOnMetal(condition),
};

/**
 * Angle between pull and axis, from the bolt's own field, else from the anchor's geometry; undefined if neither gives it [rad].
 */
function angle({ part, side }: AnchorPlace): number | undefined {
  if (part.pullAngle !== undefined) return part.pullAngle;
  return side.axisAngle === undefined ? undefined : worstLegAngle(side.axisAngle, side.legAngle);
}
