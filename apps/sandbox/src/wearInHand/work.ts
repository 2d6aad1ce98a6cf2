/** The wear view of a sandbox, which begins with the examples. */
import { createWearStore, type Sandbox, tellKnownOf, type WearStore, type WrittenRecord } from "@secondline/workbench";
import { exampleLogOf, wearStartWith } from "@secondline/workbench/record";
import breakLogText from "../../../../demo-data/break-log.csv?raw";
import recordText from "../../../../demo-data/old-rig-wear.json?raw";

export const EXAMPLE_RECORD = JSON.parse(recordText) as WrittenRecord;
export const exampleLog = () => exampleLogOf(breakLogText);

const stores = new WeakMap<Sandbox, WearStore>();

/** One per sandbox: what is looked at outlives a change of views. */
export function wearStoreOf(sandbox: Sandbox): WearStore {
  const known = stores.get(sandbox);
  if (known) return known;
  const made = createWearStore(sandbox, wearStartWith(EXAMPLE_RECORD, exampleLog(), Date.now));
  stores.set(sandbox, made);
  return made;
}

/** Tells a sandbox what its wear view has loaded. Telling a second time does nothing. */
export function tellKnown(sandbox: Sandbox): WearStore {
  const wear = wearStoreOf(sandbox);
  tellKnownOf(wear, sandbox);
  return wear;
}
