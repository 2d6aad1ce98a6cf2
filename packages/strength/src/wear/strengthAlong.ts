/** Strength of a webbing along its whole length, whether it hangs or lies in a bag. */
import type { LineStock } from "@secondline/rig";
import { type StrengthZone, webbingStrength } from "../parts/webbingStrength.ts";
import { builtInFactors, type FactorsOf } from "../retention/testedStock.ts";
import { conditionOf } from "./applyWear.ts";
import { wearOfMarks } from "./markWear.ts";
import type { WebbingState } from "./webbingState.ts";

/**
 * Zones of the remaining webbing, from the marked end on; positions from the marked end as new [m]. Places that sit in a
 * weblock now count as clamp marks here. In the sections of a rig they do not, because the rig books them to the weblock.
 */
export function strengthAlong(
  state: WebbingState,
  stock: LineStock,
  factorsOf: FactorsOf = builtInFactors,
): StrengthZone[] {
  const length = state.to - state.from;
  const condition = conditionOf(state);
  const whole = { markedEnd: "A" as const, from: state.from, to: state.to };
  const wear = wearOfMarks(state.marks, whole, length);
  return webbingStrength([{ stock, condition, wear }], length, factorsOf).map((zone) => ({
    ...zone,
    from: zone.from + state.from,
    to: zone.to + state.from,
  }));
}
