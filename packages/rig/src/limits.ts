/** The limits of a field, told in the units in which the value was written. */
import type { FactValue } from "./fact.ts";
import type { QuantityField } from "./field.ts";
import { fact, type RigFact } from "./rigFacts.ts";
import { describeValue, quantityText, type ReadQuantity } from "./units.ts";

type Refusal = Extract<ReadQuantity, { ok: false }>;

/** A limit itself is accepted in any unit, though it may miss by the last bit when it is converted [-]. */
const ROUNDING_SHARE = 1e-12;

/** A fault when an SI value lies outside a field's limits; undefined when it does not. `written` is the value as typed. */
export function checkLimits(value: number, field: QuantityField, written: unknown): Refusal | undefined {
  const [least, most] = field.limits;
  const above = value - most > ROUNDING_SHARE * Math.abs(most);
  const below = least - value > ROUNDING_SHARE * Math.abs(least);
  if (!above && !below) return undefined;
  const like = typeof written === "string" ? written : undefined;
  const high = quantityText(most, field.dimension, like);
  const low = quantityText(least, field.dimension, like ?? (least === 0 ? high : undefined));
  const got = describeValue(written);
  const told = { name: { brought: field.label }, got, low, high };
  return { ok: false, got, expected: fact("expected.range", { low, high }), message: complaint(value, field, told) };
}

interface Told {
  readonly name: FactValue;
  readonly got: FactValue;
  readonly low: string;
  readonly high: string;
}

function complaint(value: number, { limits: [least], tooLow }: QuantityField, told: Told): RigFact {
  if (value >= least) return fact("limits.large", told);
  const kind = value < 0 && least >= 0 ? "negative" : value === 0 && least > 0 ? "zero" : "small";
  if (tooLow === undefined) return fact(`limits.${kind}`, told);
  return fact(`limits.${kind}Because`, { ...told, because: { brought: tooLow } });
}
