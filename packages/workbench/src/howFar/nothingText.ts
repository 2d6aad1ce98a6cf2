import { tellFault } from "@secondline/words/faults";
import { howFarWords as words } from "@secondline/words/howFar";
import type { NoCurve } from "./howFarDesk.ts";

/** Why there is no curve of what was asked for, though every run was made. */
export function nothingText({ answer, what: { kind } }: NoCurve): string {
  if (answer.kind === "nothing")
    return words.say(`fault.nothing.${kind === "height" || kind === "load" ? kind : "other"}`);
  const why = answer.bad[0]?.issues[0]?.message;
  return words.say("fault.fewPoints", { count: answer.points, message: why === undefined ? "" : tellFault(why) });
}
