/** Loss to heat glazing, of a rope or of webbing, and of a kernmantle rope to a slipped sheath, where they are known. */
import type { Basis } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const SLIP_BASIS: Basis = {
  kind: "assumed",
  note: "a slipped sheath leaves the core to carry and to wear alone; a rope so marked is taken out of use, the number is assumed",
};
const HEAT_BASIS: Basis = { kind: "assumed", note: "glazed fibre carries nothing; the rest carries its share" };

/** Factor for a sheath slipped by a share of the sample's length [-]. */
export function sheathSlipFactor(share: number): StrengthFactor {
  return evaluateFactor({
    name: "sheath slip",
    basis: SLIP_BASIS,
    validity: { quantity: "sheath slip over length", unit: "", from: 0, to: constant("slip.to"), got: share },
    at: (s) => ({ value: 1 - constant("slip.lossPerShare") * s, spread: constant("slip.spreadPerShare") * s }),
  });
}

/** Factor for a share of the section that is glazed [-]. */
export function heatFactor(share: number): StrengthFactor {
  return evaluateFactor({
    name: "heat glazing",
    basis: HEAT_BASIS,
    validity: { quantity: "glazed share of the section", unit: "", from: 0, to: constant("heat.to"), got: share },
    at: (s) => ({ value: 1 - constant("heat.lossPerShare") * s, spread: constant("heat.spreadPerShare") * s }),
  });
}
