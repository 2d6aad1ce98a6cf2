/** Statistics of the break log and dates to come, off the page's thread. */
import { breakLogPlots } from "@secondline/figures/breakLog";
import { analyseBreakLog } from "@secondline/strength";
import { englishBreakLogWords as words } from "@secondline/words/breakLog";
import { cardDates, takeDownOutlook } from "@secondline/workbench";
import { expose } from "comlink";
import type { Analysis } from "./analysis.ts";

const analysis: Analysis = {
  breakLog(tests) {
    const report = analyseBreakLog(tests);
    return { report, plots: breakLogPlots(tests, report, words) };
  },
  takeDown: takeDownOutlook,
  card: cardDates,
};

expose(analysis);
