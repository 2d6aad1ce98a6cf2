/** From a break log to a report per group, and to the test worth doing next. */
import type { BreakTest } from "./breakTest.ts";
import { grouped } from "./grouped.ts";
import { type GroupReport, groupReport } from "./groupReport.ts";

export interface BreakLogReport {
  readonly groups: readonly GroupReport[];
  /** Group in which one more test is expected to raise the characteristic value by the largest share. */
  readonly testNext?: { readonly label: string; readonly gain: number; readonly share: number };
}

/** Groups tests of the same part, material, state and wetness. */
export function analyseBreakLog(tests: readonly BreakTest[]): BreakLogReport {
  const label = (t: BreakTest) => [t.part, t.material, t.state, t.wet ? "wet" : "dry"].join(", ");
  const groups = [...grouped(tests, label)].map(([key, group]) => groupReport(key, key, group));
  const gains = groups.flatMap((g) => {
    const one = g.narrowing[0];
    return one === undefined ? [] : [{ label: g.label, gain: one.gain, share: one.gain / g.characteristic.at75.value }];
  });
  const testNext = gains.sort((a, b) => b.share - a.share)[0];
  return { groups, ...(testNext === undefined ? {} : { testNext }) };
}
