/** Strength of a sling by the way it is rigged, over that in a straight pull. */
import type { AnchorPart, Basis } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { fixedFactor, type StrengthFactor } from "./factor.ts";
import { standIn } from "./unknown.ts";

const CHOKED_BASIS: Basis = {
  kind: "from memory",
  note: "EN 1492-1: choked 0.8 of the straight pull; a lifting association's table, seen second hand, has the same; spread assumed",
};
const BASKET_BASIS: Basis = {
  kind: "from memory",
  note: "EN 1492-1: basket with its strands up to 45° off the pull 1.4 times the straight pull (2.0 only when they are parallel, which nobody sees to here); spread assumed",
};

const BLANK_NOTE =
  "how the sling is rigged is not written down; it counts as choked. A sling rated as it is rigged says that it is straight";

/**
 * The factor of a way of rigging, as a list of one; empty when the sling is pulled straight or rated as it is rigged. If nobody
 * described the way, the sling counts as choked, and the factor names `field`. The price of that blank is measured against a
 * straight pull: a basket would raise the rating.
 */
export function riggedFactors(rigged: AnchorPart["rigged"], field: string): StrengthFactor[] {
  switch (rigged) {
    case undefined:
      return [standIn({ ...choked(), name: "way of rigging" }, { field, best: 1 }, BLANK_NOTE)];
    case "choked":
      return [choked()];
    case "basket":
      // A basket raises the strength, so the reader of the result must be told.
      return [riggedFactor("basket", constant("rigged.basket.value"), BASKET_BASIS, true)];
    case "straight":
      return [];
  }
}

const choked = () => riggedFactor("choked", constant("rigged.choked.value"), CHOKED_BASIS, false);

function riggedFactor(name: string, value: number, basis: Basis, flagged: boolean): StrengthFactor {
  return fixedFactor({ name, value, spread: constant("rigged.spread"), basis, ...(flagged ? { flagged } : {}) });
}
