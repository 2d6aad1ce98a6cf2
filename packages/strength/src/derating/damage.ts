/** Loss to abrasion and cuts, by the share of the width that is gone. Heat glazing is in `rope.ts`. */
import type { Basis } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const ABRASION_BASIS: Basis = {
  kind: "assumed",
  note: "what is worn away carries nothing; the rest carries its share",
};
const CUT_BASIS: Basis = {
  kind: "assumed",
  note: "a cut edge draws load to its tip: half as much again as the cut's share of the width",
};

/** Factor of abraded webbing; `depth` is the share of the width that is worn [-]. */
export function abrasionFactor(depth: number): StrengthFactor {
  return damage("abrasion", depth, constant("abrasion.lossPerDepth"), ABRASION_BASIS);
}

/** Factor of a cut; `depth` is the share of the width that is cut [-]. */
export function cutFactor(depth: number): StrengthFactor {
  return damage("cut", depth, constant("cut.lossPerDepth"), CUT_BASIS);
}

function damage(name: string, depth: number, lossPerDepth: number, basis: Basis): StrengthFactor {
  return evaluateFactor({
    name,
    basis,
    // Beyond the deepest damage covered the line is for the bin, not for a formula.
    validity: { quantity: "share of the width", unit: "", from: 0, to: constant("damage.to"), got: depth },
    at: (d) => ({ value: 1 - lossPerDepth * d, spread: constant("damage.spreadPerDepth") * d }),
  });
}
