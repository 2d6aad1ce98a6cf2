/** Loss with age alone, in the dark. */
import { constant } from "./constantValues.ts";
import { evaluateFactor, type StrengthFactor } from "./factor.ts";

export function ageFactor(years: number): StrengthFactor {
  return evaluateFactor({
    name: "age",
    cause: "age",
    shared: constant("age.shared"),
    basis: {
      kind: "assumed",
      note: "one hundredth a year; makers' shelf lives of about ten years are common practice",
    },
    validity: { quantity: "age", unit: "years", from: 0, to: constant("age.to"), got: years },
    at: (y) => ({ value: 1 - constant("age.lossPerYear") * y, spread: constant("age.spreadPerYear") * y }),
  });
}
