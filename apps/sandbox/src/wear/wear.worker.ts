/** Statistics of the break log and dates to come, off the page's thread. */
import { breakLogPlots } from "@secondline/figures/breakLog";
import { cardUntil, fallsLeft, rigOnLaterDays, takeDownDates } from "@secondline/scenarios";
import { analyseBreakLog, readWearRecord } from "@secondline/strength";
import { englishBreakLogWords as words } from "@secondline/words/breakLog";
import { expose } from "comlink";
import type { Analysis, TakeDownInput } from "./analysis.ts";

const analysis: Analysis = {
  breakLog(tests) {
    const report = analyseBreakLog(tests);
    return { report, plots: breakLogPlots(tests, report, words) };
  },
  takeDown: (input) => outlookOf(input, laterRigs(input)),
  card({ assessed, ...input }) {
    const rigOn = laterRigs(input);
    const outlook = outlookOf(input, rigOn);
    const until = cardUntil(assessed, outlook);
    const { on, tests, events, whole } = input;
    const left = until && whole ? fallsLeft({ on, until: until.day, rigOn, tests, events }) : undefined;
    return { outlook, ...(left === undefined ? {} : { fallsLeft: left }) };
  },
};

type RigOn = NonNullable<ReturnType<typeof rigOnLaterDays>>;

function laterRigs({ rig, record, on }: TakeDownInput): RigOn {
  const read = readWearRecord(record);
  if (!read.ok) throw new Error(`The record has faults: ${read.issues[0]?.message}`);
  return rigOnLaterDays({ rig, wear: read.record, on })!;
}

const outlookOf = ({ on, tests, events, whole }: TakeDownInput, rigOn: RigOn) =>
  takeDownDates({ on, rigOn, tests, events, whole });

expose(analysis);
