/** Loss with age alone, in the dark. */
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

export function ageFactor(years: number): StrengthFactor {
  return evaluateFactor({
    name: "age",
    cause: "age",
    shared: 0.8,
    basis: {
      kind: "assumed",
      note: "one hundredth a year; makers' shelf lives of about ten years are common practice",
    },
    validity: { quantity: "age", unit: "years", from: 0, to: 10, got: years },
    at: (y) => ({ value: 1 - 0.01 * y, spread: 0.005 * y }),
  });
}
