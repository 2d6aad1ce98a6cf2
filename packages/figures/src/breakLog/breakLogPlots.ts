/** All plots of a break log: fits group by group, then residuals and retention stock by stock. */
import { GENERIC_STOCKS, type LineStock } from "@secondline/rig";
import { type BreakLogReport, type BreakTest, stockResiduals, stockRetention } from "@secondline/strength";
import type { BreakLogWords } from "@secondline/words/breakLog";
import type { Plot } from "../plot/plot.ts";
import { fitPlot } from "./fitPlot.ts";
import { residualPlot } from "./residualPlot.ts";
import { retentionPlot } from "./retentionPlot.ts";

export type FigureKind = Plot["figure"];
export const FIGURE_KINDS: readonly FigureKind[] = ["fit", "residuals", "retention"];

/** Least number of tests for a plot [-]. */
const LEAST_FOR_FIT = 2;

/** `report`: the analysis of the same tests. Stocks: those whose rated strengths are known. */
export function breakLogPlots(
  tests: readonly BreakTest[],
  report: Pick<BreakLogReport, "groups">,
  words: BreakLogWords,
  stocks: Iterable<LineStock> = GENERIC_STOCKS.values(),
): Plot[] {
  const ofStocks = [...stocks].flatMap((stock): Plot[] => {
    const residuals = stockResiduals(stock, tests);
    if (residuals === undefined) return [];
    const retentions = Object.values(stockRetention(stock, tests));
    return [residualPlot(residuals, words), ...retentions.map((one) => retentionPlot(stock, one, words))];
  });
  const groups = report.groups.filter((group) => group.tests.length >= LEAST_FOR_FIT);
  return [...groups.map((group) => fitPlot(group, words)), ...ofStocks];
}
