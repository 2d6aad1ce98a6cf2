/** Groups tests whose samples a log describes alike. A question about the sample then has one answer for the group. */

import { grouped } from "./grouped.ts";
import type { BreakTest } from "./logEntry.ts";

export interface AlikeTests {
  /** Any test of the group; the tests differ in batch, date, result and notes only. */
  readonly sample: BreakTest;
  readonly tests: readonly BreakTest[];
}

const GROUPS_OF_LOG = new WeakMap<readonly BreakTest[], readonly AlikeTests[]>();

/** All tests of a log, in the order in which their samples first appear. The log must not change afterwards. */
export function alikeTests(tests: readonly BreakTest[]): readonly AlikeTests[] {
  const kept = GROUPS_OF_LOG.get(tests);
  if (kept !== undefined) return kept;
  const found = [...grouped(tests, sampleOf).values()].map((alike) => ({ sample: alike[0]!, tests: alike }));
  GROUPS_OF_LOG.set(tests, found);
  return found;
}

/** The fields that tell samples apart, joined; texts have no line breaks. */
function sampleOf(test: BreakTest): string {
  const { material, part, state, wet, monthsOutside, sunMonths, falls, clampedMonths, sewnMonths, knot } = test;
  return `${material}\n${part}\n${state}\n${wet} ${monthsOutside} ${sunMonths} ${falls} ${clampedMonths} ${sewnMonths} ${knot}`;
}
