/** What came in the way of the fall in sight. */
import { sayPage } from "@secondline/words/page/page";
import type { RunSlice } from "../inHand/state.ts";

/** `isBelow`: a run before it is still to be seen. Undefined where nothing came in the way. */
export function fallTrouble(
  fall: RunSlice["fall"],
  isBelow: boolean,
): { readonly text: string; readonly isAlert: boolean } | undefined {
  switch (fall.kind) {
    case "stopped":
      return { text: sayPage(isBelow ? "answer.stoppedBelow" : "answer.stopped"), isAlert: false };
    case "failed": {
      const message = fall.message.replace(/\.?$/, ".");
      return { text: sayPage(isBelow ? "answer.notComputedBelow" : "answer.notComputed", { message }), isAlert: true };
    }
    default:
      return undefined;
  }
}
