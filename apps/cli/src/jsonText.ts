/**
 * Data as JSON. A number that JSON has no word for would become null: that is a programmer's error and throws. `endless`: what is
 * written for a number without end, where there may be one.
 */
export function jsonText(value: unknown, endless?: string): string {
  return JSON.stringify(
    value,
    (key, inner: unknown) => {
      if (typeof inner !== "number" || Number.isFinite(inner)) return inner;
      if (inner === Number.POSITIVE_INFINITY && endless !== undefined) return endless;
      throw new Error(`"${key}" is ${inner}: no number.`);
    },
    2,
  );
}
