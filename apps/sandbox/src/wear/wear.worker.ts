/** Statistics of the break log and dates to come, off the page's thread. */
import { analyseBreakLog, factorsFromLog, futureFromRecord, readWearRecord, takeDown } from "@secondline/strength";
import { expose } from "comlink";
import type { Analysis } from "./analysis.ts";

const analysis: Analysis = {
  breakLog: (tests) => analyseBreakLog(tests),
  takeDowns({ rig, record, on, loads, requiredFactor, confidences, tests }) {
    const read = readWearRecord(record);
    if (!read.ok) throw new Error(`The record has faults: ${read.issues[0]?.message}`);
    const rigOn = futureFromRecord(rig, read.record, on);
    const factors = tests.length === 0 ? {} : { factorsOf: factorsFromLog(tests) };
    return confidences.map((confidence) => takeDown({ rigOn, on, loads, requiredFactor, confidence, ...factors }));
  },
};
expose(analysis);
