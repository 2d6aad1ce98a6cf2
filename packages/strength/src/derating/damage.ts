/** Loss to abrasion and cuts, by the share of the width that is gone. Heat glazing is in `rope.ts`. */
import type { Basis } from "@secondline/rig";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const ABRASION: Basis = { kind: "assumed", note: "what is worn away carries nothing; the rest carries its share" };
const CUT: Basis = {
  kind: "assumed",
  note: "a cut edge draws load to its tip: half as much again as the cut's share of the width",
};

/** Deepest damage the factors cover, share of the width [-]. Beyond it the line is for the bin, not for a formula. */
const DEEPEST = 0.4;

/** Factor of abraded webbing; `depth` is the share of the width that is worn [-]. */
export function abrasionFactor(depth: number): StrengthFactor {
  return damage("abrasion", depth, 1, ABRASION);
}

/** Factor of a cut; `depth` is the share of the width that is cut [-]. */
export function cutFactor(depth: number): StrengthFactor {
  return damage("cut", depth, 1.5, CUT);
}

function damage(name: string, depth: number, lossPerDepth: number, basis: Basis): StrengthFactor {
  return evaluateFactor({
    name,
    basis,
    validity: { quantity: "share of the width", unit: "", from: 0, to: DEEPEST, got: depth },
    at: (d) => ({ value: 1 - lossPerDepth * d, spread: 0.4 * d }),
  });
}
