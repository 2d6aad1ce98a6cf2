/** Rows of a log that repeat others to the letter: a log that was joined with itself counts every piece twice. */
import type { BreakTest } from "./logEntry.ts";

/** Fewer repeated rows than this count, and than this share of all rows, are likely to be equal results by chance [-]. */
const LEAST_COPIES = 2;
const LEAST_COPIES_SHARE = 1 / 3;

/**
 * How many breaks repeat another one in everything but the line of the file; 0 if they are so few that chance explains
 * them [-].
 */
export function copiesIn(tests: readonly BreakTest[]): number {
  // Survivors do not count: a machine stops at the same load again and again.
  const broke = tests.filter(({ result }) => result.kind === "exact");
  const rows = new Set(broke.map(({ line: _, ...row }) => JSON.stringify(row)));
  const count = broke.length - rows.size;
  return count < Math.max(LEAST_COPIES, LEAST_COPIES_SHARE * broke.length) ? 0 : count;
}
