/** What a sling holds by how it is rigged, over its straight pull. */
import type { AnchorPart, Basis } from "@secondline/rig";
import { constant } from "./constants.ts";
import { fixedFactor, type StrengthFactor } from "./factor.ts";

const CHOKED: Basis = {
  kind: "from memory",
  note: "EN 1492-1: choked 0.8 of the straight pull; a lifting association's table, seen second hand, has the same; spread assumed",
};
const BASKET: Basis = {
  kind: "from memory",
  note: "EN 1492-1: basket with its strands up to 45° off the pull 1.4 times the straight pull (2.0 only when they are parallel, which nobody sees to here); spread assumed",
};

/** The factor of a way of rigging, as a list of one; none when the sling is pulled straight or rated as it is rigged. */
export function riggedFactors(rigged: AnchorPart["rigged"]): StrengthFactor[] {
  if (rigged === "choked")
    return [
      fixedFactor({
        name: "choked",
        value: constant("rigged.choked.value"),
        spread: constant("rigged.spread"),
        basis: CHOKED,
      }),
    ];
  // It raises the strength, so whoever reads the result must be told.
  if (rigged === "basket") {
    return [
      fixedFactor({
        name: "basket",
        value: constant("rigged.basket.value"),
        spread: constant("rigged.spread"),
        basis: BASKET,
        flagged: true,
      }),
    ];
  }
  return [];
}
