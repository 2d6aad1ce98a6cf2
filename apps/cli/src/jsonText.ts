import type { Fact } from "@secondline/rig";
import { tellNote } from "@secondline/words/notes";

/**
 * Data as JSON. Notes and bases that are facts stand in it as their sentences. A number that JSON cannot write would become
 * null: that is a programmer's error and throws. `endless`: the text for an infinite number, if there may be one.
 */
export function jsonText(value: unknown, endless?: string): string {
  return JSON.stringify(
    value,
    (key, inner: unknown) => {
      if (isFact(inner)) return tellNote(inner);
      if (typeof inner !== "number" || Number.isFinite(inner)) return inner;
      if (inner === Number.POSITIVE_INFINITY && endless !== undefined) return endless;
      throw new Error(`"${key}" is ${inner}: no number.`);
    },
    2,
  );
}

const isFact = (value: unknown): value is Fact =>
  typeof value === "object" && value !== null && "code" in value && "values" in value;
