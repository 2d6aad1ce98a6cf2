/** Loss at stitching: as sewn, and more for thread that hangs outside under load. */
import type { Basis } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const SEWING_BASIS: Basis = {
  kind: "assumed",
  note: "no source found; four fifths of the webbing or rope as sewn, thread losing more in the open, numbers assumed",
};
const NEW_SEAM_SHARE = constant("sewing.asSewn");

function sewnShare(months: number): number {
  return NEW_SEAM_SHARE - constant("sewing.loss") * (1 - Math.exp(-months / constant("sewing.months")));
}

/** Factor on the webbing's strength at stitching that has been outside for some months. */
export function sewingFactor(months: number): StrengthFactor {
  return sewingOver(months, 1, "sewing");
}

/** Factor on the strength of a loop rated as sewn, after some months outside. */
export function sewnLoopAgeing(months: number): StrengthFactor {
  return sewingOver(months, NEW_SEAM_SHARE, "stitching outside");
}

function sewingOver(months: number, rated: number, name: string): StrengthFactor {
  return evaluateFactor({
    name,
    cause: "sewing",
    shared: constant("sewing.shared"),
    basis: SEWING_BASIS,
    validity: { quantity: "time outside", unit: "months", from: 0, to: constant("sewing.to"), got: months },
    at: (m) => {
      const value = sewnShare(m) / rated;
      return {
        value,
        spread: constant("sewing.spread") + constant("sewing.spreadPerLoss") * (1 - sewnShare(m) / NEW_SEAM_SHARE),
      };
    },
  });
}
