/** Loss of a loop bent over a pin. */
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

const FULL = 8;

/** Factor for pin diameter over webbing thickness [-]. */
export function bendFactor(ratio: number): StrengthFactor {
  return evaluateFactor({
    name: "bend over pin",
    cause: "bend over pin",
    shared: 0.5,
    basis: {
      kind: "from memory",
      note: "Cordage Institute rule: full strength from D/d = 8, about half at D/d = 1; logarithmic between, assumed",
    },
    // A wider pin than the rule speaks of is as good as full: the range has no upper end that matters.
    validity: { quantity: "pin diameter over thickness", unit: "", from: 1, to: 1000, got: ratio },
    at: (r) => {
      const value = r >= FULL ? 1 : 0.5 + (0.5 * Math.log(r)) / Math.log(FULL);
      return { value, spread: 0.02 + 0.2 * (1 - value) };
    },
  });
}
