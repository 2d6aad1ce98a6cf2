/** Loss where webbing sits or has sat in a clamp. */
import type { Basis } from "@secondline/rig";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const BASIS: Basis = {
  kind: "assumed",
  note: "no source found; that a long-clamped place is the weakest of an old line is common practice, the numbers are assumed",
};

/** Load over rated strength at which the months alone set the loss [-]. */
const USUAL_LOAD_SHARE = 0.1;

/**
 * Factor of a clamp mark after some months in the clamp. `loadShare`: load while clamped over rated strength [-];
 * absent: a usual one.
 */
export function clampFactor(months: number, loadShare: number = USUAL_LOAD_SHARE): StrengthFactor {
  // The load scales the loss by its root, within bounds: heavier lines bite deeper, but nothing says how much.
  const scale = Math.min(1.4, Math.max(0.8, Math.sqrt(loadShare / USUAL_LOAD_SHARE)));
  return evaluateFactor({
    name: "clamp mark",
    cause: "clamp mark",
    shared: 0.6,
    basis: BASIS,
    validity: { quantity: "time in the clamp", unit: "months", from: 0, to: 24, got: months },
    at: (m) => {
      const loss = scale * (0.05 + 0.4 * (1 - Math.exp(-m / 4)));
      return { value: 1 - loss, spread: 0.35 * loss };
    },
  });
}
