/** Brings what reads wear records and break tests once there is one to read: with neither, a page is loaded without it. */

import { sayPage } from "@secondline/words/page/page";
import type { Sandbox, SandboxState } from "@secondline/workbench";
import { hasExampleWear } from "../demo/firstRig.ts";

const isNeeded = ({ session, document }: SandboxState): boolean =>
  session.wear !== undefined || hasExampleWear(document.rig);

/** Resolved once it is known whether this state has a record or tests, and what they say. */
export async function bringWear(sandbox: Sandbox): Promise<void> {
  const { store } = sandbox;
  if (isNeeded(store.getState())) return bring(sandbox);
  const unsubscribe = store.subscribe((state) => {
    if (!isNeeded(state)) return;
    unsubscribe();
    void bring(sandbox);
  });
}

async function bring(sandbox: Sandbox): Promise<void> {
  try {
    const { tellKnown } = await import("./work.ts");
    tellKnown(sandbox);
  } catch {
    sandbox.actions.tell({
      tone: "fault",
      text: sayPage("wearOnDemand.partMissing"),
    });
  }
}
