/** Makes a report for every group of a break log, and names the test worth doing next. */
import { GENERIC_STOCKS, type LineStock } from "@secondline/rig";
import { grouped } from "../breakLog/grouped.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { groupKey } from "../breakLog/testGroup.ts";
import { modelAgainstTests, type StockComparison } from "../retention/stockComparison.ts";
import { type GroupReport, type GroupReportOptions, groupReport } from "./groupReport.ts";

export interface BreakLogReport {
  readonly groups: readonly GroupReport[];
  /** The group whose characteristic value one more test is expected to raise by the largest share. */
  readonly testNext?: {
    readonly label: string;
    readonly gain: number;
    readonly share: number;
    readonly spreadAssumed?: true;
  };
  /** The built-in model against the tests, for every stock that has tests that count. */
  readonly comparisons: readonly StockComparison[];
}

export interface AnalysisOptions extends GroupReportOptions {
  /** Stocks whose rated strengths are known; default: the generic ones. */
  readonly stocks?: readonly LineStock[];
}

/** As the first test of a group writes it. */
const labelOf = ({ part, material, state, wet }: BreakTest) => [part, material, state, wet ? "wet" : "dry"].join(", ");

/** Groups tests of the same part, material, state and wetness. */
export function analyseBreakLog(tests: readonly BreakTest[], options: AnalysisOptions = {}): BreakLogReport {
  const groups = [...grouped(tests, groupKey)].map(([key, group]) =>
    groupReport(key, labelOf(group[0]!), group, options),
  );
  const stocks = options.stocks ?? [...GENERIC_STOCKS.values()];
  const gains = groups.flatMap((g) => {
    const one = g.narrowing[0];
    const share = one === undefined ? 0 : one.gain / g.characteristic.at75.value;
    const assumed = g.tests.length < 3 ? { spreadAssumed: true as const } : {};
    return one === undefined || share <= 0 ? [] : [{ label: g.label, gain: one.gain, share, ...assumed }];
  });
  const testNext = gains.sort((a, b) => b.share - a.share)[0];
  return { groups, comparisons: modelAgainstTests(stocks, tests), ...(testNext === undefined ? {} : { testNext }) };
}
