/** Which values of a new rig nobody has said: everything that a run asks for and no answer confirms. */
import { fieldAt } from "@secondline/rig";

/** Values that a run does not ask for, or that are no more than the user's choice. */
const NOT_ASKED =
  /^(?:required\w+|stocks\[\d+\]|.*\.condition\..*|leash\.knots\[\d+\]\.where|anchor[AB]\.hardware\[\d+\]\.kind)/;

/** Paths of all values of a document that can be confirmed, in its order; the ground as one. */
export function valuesOf(document: object): readonly string[] {
  return Object.entries(document).flatMap(([key, value]) => (key === "ground" ? ["ground"] : pathsIn(key, value)));
}

/** Paths of the values of one part of a document that can be confirmed. */
export function pathsIn(path: string, value: unknown): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((item, i) => pathsIn(`${path}[${i}]`, item));
  if (typeof value === "object" && value !== null)
    return Object.entries(value).flatMap(([key, inner]) => pathsIn(`${path}.${key}`, inner));
  const field = fieldAt(path);
  const counts = field !== undefined && field.kind !== "text" && field.kind !== "basis" && !NOT_ASKED.test(path);
  return counts ? [path] : [];
}

/** A path with `[]` for every index, as the table of fields has it. */
export const patternOf = (path: string): string => path.replace(/\[\d+\]/g, "[]");
