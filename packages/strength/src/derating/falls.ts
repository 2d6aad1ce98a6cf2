/** Loss to leash falls: the ring's blows and rubbing, and the repeated loads. */
import type { Basis } from "@secondline/rig";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const BASIS: Basis = {
  kind: "assumed",
  note: "no source found; a slow loss that levels off at a quarter of the strength, to be replaced by own break tests",
};

/** Factor for a number of falls on a stretch of webbing or on a leash. */
export function fallsFactor(falls: number, on: "webbing" | "leash"): StrengthFactor {
  return evaluateFactor({
    name: "falls",
    cause: `falls on ${on}`,
    shared: 0.6,
    basis: BASIS,
    validity: { quantity: "falls", unit: "falls", from: 0, to: 400, got: falls },
    at: (n) => {
      const loss = 0.25 * (1 - Math.exp(-n / 100));
      return { value: 1 - loss, spread: 0.5 * loss };
    },
  });
}
