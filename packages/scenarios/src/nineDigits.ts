/**
 * Numbers of a problem are kept to nine significant digits. What is worked out with exp, cos and their like may differ in its last
 * bits from one JavaScript engine to the next, and a catch shows the last bit: rounded, everybody runs the same problem.
 */
const SIGNIFICANT_DIGITS = 9;

/** The same value with every number in it rounded; lists, groups, texts and endless strengths stay what they are. */
export function nineDigits<T>(value: T): T {
  if (typeof value === "number")
    return (Number.isFinite(value) ? Number(value.toPrecision(SIGNIFICANT_DIGITS)) : value) as T;
  if (Array.isArray(value)) return value.map(nineDigits) as T;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, nineDigits(inner)])) as T;
}
