import { newRigWords } from "@secondline/words/newRig";
import type { Fault } from "@secondline/workbench";

/** A fault of an answer in a sentence. */
export const faultText = (fault: Fault): string =>
  fault.kind === "issue" ? fault.issue.message : newRigWords.say(`fault.${fault.kind}`, fault.values);
