/** Loss where webbing sits or has sat in a clamp. */
import type { Basis } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";
import { logSpread, Z95 } from "./lognormal.ts";

const CLAMP_BASIS: Basis = {
  kind: "assumed",
  note: "no source found; that a long-clamped place is the weakest of an old line is common practice, the numbers are assumed",
};

/** Factor of a clamp mark after some months in the clamp. `loadShare`: load while clamped over rated strength [-]. */
export function clampFactor(months: number, loadShare: number = constant("clamp.usualLoad")): StrengthFactor {
  // The load scales the loss by its root, within bounds: heavier lines bite deeper, but nothing says how much.
  const scale = Math.min(
    constant("clamp.mostScale"),
    Math.max(constant("clamp.leastScale"), Math.sqrt(loadShare / constant("clamp.usualLoad"))),
  );
  return evaluateFactor({
    name: "clamp mark",
    cause: "clamp mark",
    shared: constant("clamp.shared"),
    basis: CLAMP_BASIS,
    validity: { quantity: "time in the clamp", unit: "months", from: 0, to: constant("clamp.to"), got: months },
    at: (m) => {
      const loss =
        scale * (constant("clamp.first") + constant("clamp.loss") * (1 - Math.exp(-m / constant("clamp.months"))));
      return { value: 1 - loss, spread: constant("clamp.spreadPerLoss") * loss };
    },
  });
}

/**
 * Factor of a clamp mark under an unknown load: that of the load above which marks get no deeper. Its 5 % value is that of the
 * worst mark too. The central value is lower and the spread is not wider: such a mark is deeper than one under a usual load,
 * not less sure.
 */
export function clampOfUnknownLoad(months: number): StrengthFactor {
  const usual = clampFactor(months);
  const worst = clampFactor(months, constant("clamp.usualLoad") * constant("clamp.mostScale") ** 2);
  if (usual.spread >= worst.spread) return worst;
  const value = worst.value * Math.exp(-Z95 * (logSpread(worst.spread) - logSpread(usual.spread)));
  return { ...worst, value, spread: usual.spread };
}
