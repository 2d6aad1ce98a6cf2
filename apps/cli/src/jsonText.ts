/** Data as JSON. A number that JSON has no word for would become null: that is a programmer's error and throws. */
export function jsonText(value: unknown): string {
  return JSON.stringify(
    value,
    (key, inner: unknown) => {
      if (typeof inner === "number" && !Number.isFinite(inner)) throw new Error(`"${key}" is ${inner}: no number.`);
      return inner;
    },
    2,
  );
}
