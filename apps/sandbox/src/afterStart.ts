/** What the page does once it works: it keeps itself for use without a network, tells what is known to be wrong with it, and shows the worst. */

import { openOnWorst, type Sandbox } from "@secondline/workbench";
import { tellErrata } from "./errata.ts";
import { keepOffline } from "./offline.ts";

/** `isNamed`: a link, or the work kept here, says which what-if is to be in sight. */
export function afterStart(sandbox: Sandbox, isNamed: boolean): void {
  keepOffline(sandbox.actions);
  void tellErrata(sandbox.actions);
  if (!isNamed) openOnWorst(sandbox, firstTouch());
}

/** Events by which a user first touches the page: pointer, wheel, key or any other way to type. */
const TOUCHES = ["pointerdown", "wheel", "keydown", "input"] as const;

function firstTouch(): () => boolean {
  const first = new AbortController();
  for (const kind of TOUCHES)
    addEventListener(kind, () => first.abort(), { capture: true, passive: true, signal: first.signal });
  return () => first.signal.aborted;
}
