/** Splits tests by the day on which they were pulled: nobody knew a later test on that day. */
import type { BreakTest } from "./logEntry.ts";

export interface TestsUntil {
  /** Pulled by the day, or without a date. */
  readonly counted: readonly BreakTest[];
  /** Pulled after the day. */
  readonly later: readonly BreakTest[];
}

/** `on`: YYYY-MM-DD; if undefined, all tests count. */
export function testsUntil(tests: readonly BreakTest[], on: string | undefined): TestsUntil {
  // Returns the same list, so that results kept for this list stay valid.
  if (on === undefined) return { counted: tests, later: [] };
  const isLater = ({ date }: BreakTest) => date !== undefined && date > on;
  return { counted: tests.filter((test) => !isLater(test)), later: tests.filter(isLater) };
}
