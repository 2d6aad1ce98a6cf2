/** Which tests were pulled by a day: a later one says nothing of what was known on it. */
import type { BreakTest } from "./logEntry.ts";

export interface TestsUntil {
  /** Pulled by the day, or without a date. */
  readonly counted: readonly BreakTest[];
  /** Pulled after it. */
  readonly later: readonly BreakTest[];
}

/** `on`: YYYY-MM-DD; undefined when no day is asked about, and then all tests count. */
export function testsUntil(tests: readonly BreakTest[], on: string | undefined): TestsUntil {
  // The same list: what is known of it stays known.
  if (on === undefined) return { counted: tests, later: [] };
  const isLater = ({ date }: BreakTest) => date !== undefined && date > on;
  return { counted: tests.filter((test) => !isLater(test)), later: tests.filter(isLater) };
}
