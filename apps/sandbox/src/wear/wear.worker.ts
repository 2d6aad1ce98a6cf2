/** Statistics of the break log and dates to come, off the page's thread. */
import { rigOnLaterDays, takeDownDates } from "@secondline/scenarios";
import { analyseBreakLog, readWearRecord } from "@secondline/strength";
import { expose } from "comlink";
import type { Analysis } from "./analysis.ts";

const analysis: Analysis = {
  breakLog: (tests) => analyseBreakLog(tests),
  takeDown({ rig, record, on, tests, events, whole }) {
    const read = readWearRecord(record);
    if (!read.ok) throw new Error(`The record has faults: ${read.issues[0]?.message}`);
    const rigOn = rigOnLaterDays({ rig, wear: read.record, on })!;
    return takeDownDates({ on, rigOn, tests, events, whole });
  },
};
expose(analysis);
