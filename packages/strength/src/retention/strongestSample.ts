/**
 * The loss of a state's 5 % value by its best test. A strong piece among weaker ones is more scatter, so the value would be
 * higher had the piece held less. See STATISTICS.md, "The 5 % value can rise when a test is lower".
 */
import type { BreakTest } from "../breakLog/logEntry.ts";

export interface BestTest {
  readonly test: BreakTest;
  /** Load of the next best test of the state [N]. */
  readonly next: number;
  /** Rise of the 5 % value if the best test had held no more than that [-]. */
  readonly costs: number;
}

/**
 * Most tests of a log for which this is computed: each state costs one more model, and in a longer log one test says
 * little [-].
 */
const MOST_TESTS = 100;
/** Smaller rises are not told [-]. */
const LEAST_TOLD_RISE = 0.01;

/** `lowFrom`: the 5 % value of the state by other tests of the stock [N]. */
export function bestTest(
  tests: readonly BreakTest[],
  ofState: readonly BreakTest[],
  lowFrom: (tests: readonly BreakTest[]) => number,
): BestTest | undefined {
  if (tests.length > MOST_TESTS) return undefined;
  const held = ofState.flatMap((test) => (test.result.kind === "exact" ? [{ test, load: test.result.value }] : []));
  const [best, second] = held.sort((a, b) => b.load - a.load);
  if (best === undefined || second === undefined || best.load === second.load) return undefined;
  const result = { kind: "exact", value: second.load } as const;
  const lower = tests.map((test) => (test === best.test ? { ...test, result } : test));
  const costs = lowFrom(lower) / lowFrom(tests) - 1;
  return costs > LEAST_TOLD_RISE ? { test: best.test, next: second.load, costs } : undefined;
}
