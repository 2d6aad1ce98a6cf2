/** What a wear view begins with: the examples, or nothing. */
import { readBreakLog } from "@secondline/strength";
import { sayWear } from "@secondline/words/page/wear";
import type { BreakLog, WrittenRecord } from "../documents/documents.ts";
import type { WearStart } from "../wear/wearStore.ts";
import { saysInvented } from "./readWear.ts";

export const NEW_RECORD: WrittenRecord = {
  secondline: "wear/1",
  name: sayWear("work.wearRecord"),
  webbings: [],
  parts: [],
};
export const NO_LOG: BreakLog = { name: sayWear("work.breakLog"), invented: false, tests: [] };

/** A log as an example bears it; no tests where it cannot be read. */
export function exampleLogOf(csv: string): BreakLog {
  const read = readBreakLog(csv);
  if (!read.ok) return NO_LOG;
  return { name: sayWear("wearStore.exampleBreakLog"), invented: saysInvented(csv), tests: read.tests };
}

/** Starts with the examples of a first visit. `now`: milliseconds since 1970. */
export const wearStartWith = (record: WrittenRecord, log: BreakLog, now: () => number): WearStart => ({
  example: { record, log, stocks: {} },
  steps: {
    testAdded: sayWear("wearStore.breakTestAdded"),
    testChanged: sayWear("wearStore.breakTestChanged"),
    testRemoved: sayWear("wearStore.breakTestRemoved"),
  },
  now,
});
