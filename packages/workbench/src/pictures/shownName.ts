/** What a run is called in the name of a file. */
import { englishWords as words } from "@secondline/words";
import type { ShownRun } from "../inHand/state.ts";

export const shownName = ({ assessed: { rig }, whatIf }: Pick<ShownRun, "assessed" | "whatIf">): string =>
  `${rig.name} ${words.eventTitle(rig, whatIf)}`;
