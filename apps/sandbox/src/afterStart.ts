/** What the page does once it works: it keeps itself for use without a network, and tells what is known to be wrong with it. */
import { tellErrata } from "./errata.ts";
import { keepOffline } from "./offline.ts";
import type { Actions } from "./state/sandbox.ts";

export function afterStart(actions: Actions): void {
  keepOffline(actions);
  void tellErrata(actions);
}
