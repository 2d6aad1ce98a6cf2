/** Rows of a log that repeat others to the letter: a log that was joined with itself counts every piece twice. */
import type { BreakTest } from "./logEntry.ts";

/** Fewer rows that repeat another than this, and than this share of all, are likely to be results that came out alike [-]. */
const LEAST_COPIES = 2;
const LEAST_COPIES_SHARE = 1 / 3;

/** How many breaks of some tests repeat another one in everything but the line of the file; 0 where so few do that they may be chance [-]. */
export function copiesIn(tests: readonly BreakTest[]): number {
  // A machine stops at the same load again and again.
  const broke = tests.filter(({ result }) => result.kind === "exact");
  const rows = new Set(broke.map(({ line: _, ...row }) => JSON.stringify(row)));
  const count = broke.length - rows.size;
  return count < Math.max(LEAST_COPIES, LEAST_COPIES_SHARE * broke.length) ? 0 : count;
}
