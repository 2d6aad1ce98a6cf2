import { type Sandbox, tellKnownOf, type WearStore } from "@secondline/workbench";
import { wearStoreOf } from "./work.ts";

/** Tells a sandbox what its wear view has loaded. Telling a second time does nothing. */
export function tellKnown(sandbox: Sandbox): WearStore {
  const wear = wearStoreOf(sandbox);
  tellKnownOf(wear, sandbox);
  return wear;
}
