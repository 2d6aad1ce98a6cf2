/** A wear view that begins with the record and the log of demo-data. */
import { readFileSync } from "node:fs";
import { readBreakLog } from "@secondline/strength";
import {
  createWearStore,
  type Sandbox,
  tellKnownOf,
  type WearStore,
  type WearWork,
  type WrittenRecord,
} from "../src/index.ts";

const demo = (name: string) => readFileSync(new URL(`../../../demo-data/${name}`, import.meta.url), "utf8");

export const exampleLogText = demo("break-log.csv");

export const exampleRecord = JSON.parse(demo("old-rig-wear.json")) as WrittenRecord;

function example(): WearWork {
  const read = readBreakLog(exampleLogText);
  if (!read.ok) throw new Error(JSON.stringify(read.faults[0]));
  return { record: exampleRecord, log: { name: "Example", invented: true, tests: read.tests }, stocks: {} };
}

const steps = { testAdded: "test added", testChanged: "test changed", testRemoved: "test removed" };

export const wearStart = () => ({ example: example(), steps, now: () => 1 });

export function withWear(sandbox: Sandbox): WearStore {
  const wear = createWearStore(sandbox, wearStart());
  tellKnownOf(wear, sandbox);
  return wear;
}
