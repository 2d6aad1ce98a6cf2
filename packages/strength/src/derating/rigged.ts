/** What a sling holds by how it is rigged, over its straight pull. */
import type { AnchorPart, Basis } from "@secondline/rig";
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
  if (rigged === "choked") return [fixedFactor({ name: "choked", value: 0.8, spread: 0.1, basis: CHOKED })];
  // It raises the strength, so whoever reads the result must be told.
  if (rigged === "basket") {
    return [fixedFactor({ name: "basket", value: 1.4, spread: 0.1, basis: BASKET, flagged: true })];
  }
  return [];
}
