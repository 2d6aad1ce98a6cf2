/** Loss to leash falls: the ring's blows and rubbing, and the repeated loads. */
import type { Basis } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const FALLS_BASIS: Basis = {
  kind: "assumed",
  note: "no source found; a slow loss that levels off at a quarter of the strength, to be replaced by own break tests",
};

/** Factor for a number of falls on a stretch of webbing or on a leash. */
export function fallsFactor(falls: number, on: "webbing" | "leash"): StrengthFactor {
  return evaluateFactor({
    name: "falls",
    cause: `falls on ${on}`,
    shared: constant("falls.shared"),
    basis: FALLS_BASIS,
    validity: { quantity: "falls", unit: "falls", from: 0, to: constant("falls.to"), got: falls },
    at: (n) => {
      const loss = constant("falls.loss") * (1 - Math.exp(-n / constant("falls.count")));
      return { value: 1 - loss, spread: constant("falls.spreadPerLoss") * loss };
    },
  });
}
