/**
 * What the best test of a state costs its 5 % value: a strong piece among weaker ones is more scatter, so that the value would be
 * higher had the piece held less. See STATISTICS.md, "The 5 % value can rise when a test is lower".
 */
import type { BreakTest } from "../breakLog/logEntry.ts";

export interface BestTest {
  readonly test: BreakTest;
  /** What the next best test of the state held [N]. */
  readonly next: number;
  /** By how much the 5 % value would be higher had the best one held no more than that [-]. */
  readonly costs: number;
}

/** Each state asks for one more model; in a longer log one test says little [-]. */
const MOST_TESTS = 100;
/** A lesser rise is no news [-]. */
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
