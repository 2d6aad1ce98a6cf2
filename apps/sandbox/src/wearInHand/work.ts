/** What a wear view begins with: the examples, or nothing. */
import { readBreakLog } from "@secondline/strength";
import { sayWear } from "@secondline/words/page/wear";
import {
  type BreakLog,
  createWearStore,
  type Sandbox,
  type WearStore,
  type WearWork,
  type WrittenRecord,
} from "@secondline/workbench";
import { saysInvented } from "@secondline/workbench/record";
import breakLogText from "../../../../demo-data/break-log.csv?raw";
import recordText from "../../../../demo-data/old-rig-wear.json?raw";

export const EXAMPLE_RECORD = JSON.parse(recordText) as WrittenRecord;
export const EXAMPLE_LOG_TEXT = breakLogText;

export const NEW_RECORD: WrittenRecord = {
  secondline: "wear/1",
  name: sayWear("work.wearRecord"),
  webbings: [],
  parts: [],
};
export const NO_LOG: BreakLog = { name: sayWear("work.breakLog"), invented: false, tests: [] };

export function exampleLog(): BreakLog {
  const read = readBreakLog(EXAMPLE_LOG_TEXT);
  if (!read.ok) return NO_LOG;
  return { name: sayWear("wearStore.exampleBreakLog"), invented: saysInvented(EXAMPLE_LOG_TEXT), tests: read.tests };
}

const exampleWork = (): WearWork => ({ record: EXAMPLE_RECORD, log: exampleLog(), stocks: {} });

const STEPS = {
  testAdded: sayWear("wearStore.breakTestAdded"),
  testChanged: sayWear("wearStore.breakTestChanged"),
  testRemoved: sayWear("wearStore.breakTestRemoved"),
};

export const wearStart = () => ({ example: exampleWork(), steps: STEPS, now: () => Date.now() });

const stores = new WeakMap<Sandbox, WearStore>();

/** One per sandbox: what is looked at outlives a change of views. */
export function wearStoreOf(sandbox: Sandbox): WearStore {
  const known = stores.get(sandbox);
  if (known) return known;
  const made = createWearStore(sandbox, wearStart());
  stores.set(sandbox, made);
  return made;
}
