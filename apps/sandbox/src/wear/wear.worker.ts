/** Statistics of the break log and dates to come, off the page's thread. */
import { breakLogPlots } from "@secondline/figures/breakLog";
import { rigOnLaterDays, takeDownDates } from "@secondline/scenarios";
import { analyseBreakLog, readWearRecord } from "@secondline/strength";
import { englishBreakLogWords as words } from "@secondline/words/breakLog";
import { expose } from "comlink";
import type { Analysis } from "./analysis.ts";

const analysis: Analysis = {
  breakLog(tests) {
    const report = analyseBreakLog(tests);
    return { report, plots: breakLogPlots(tests, report, words) };
  },
  takeDown({ rig, record, on, tests, events, whole }) {
    const read = readWearRecord(record);
    if (!read.ok) throw new Error(`The record has faults: ${read.issues[0]?.message}`);
    const rigOn = rigOnLaterDays({ rig, wear: read.record, on })!;
    return takeDownDates({ on, rigOn, tests, events, whole });
  },
};
expose(analysis);
