/** Loss of a loop bent over a pin. */
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

/** Factor for pin diameter over webbing thickness [-]. */
export function bendFactor(ratio: number): StrengthFactor {
  return evaluateFactor({
    name: "bend over pin",
    cause: "bend over pin",
    shared: constant("bend.shared"),
    basis: {
      kind: "from memory",
      note: "Cordage Institute rule: full strength from D/d = 8, about half at D/d = 1; logarithmic between, assumed",
    },
    // A pin wider than the rule's range takes nothing, so the range has no upper end that matters.
    validity: { quantity: "pin diameter over thickness", unit: "", from: 1, to: 1000, got: ratio },
    at: (r) => {
      const [atOne, full] = [constant("bend.atOne"), constant("bend.full")];
      const value = r >= full ? 1 : atOne + ((1 - atOne) * Math.log(r)) / Math.log(full);
      return { value, spread: constant("bend.spread") + constant("bend.spreadPerLoss") * (1 - value) };
    },
  });
}
