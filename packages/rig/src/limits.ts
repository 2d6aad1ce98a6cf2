/** The limits of a field, told in the units in which the value was written. */
import type { QuantityField } from "./field.ts";
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
  const because = value < least && field.tooLow !== undefined ? ` (${field.tooLow})` : "";
  return {
    ok: false,
    got,
    expected: `${low} to ${high}`,
    message: `${field.label}: ${got} ${complaint(value, least)}${because}. It lies between ${low} and ${high}.`,
  };
}

function complaint(value: number, least: number): string {
  if (value < 0 && least >= 0) return "must not be negative";
  if (value === 0 && least > 0) return "must not be zero";
  return value < least ? "is too small" : "is too large";
}
