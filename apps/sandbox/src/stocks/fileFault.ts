import { formatForce } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import { MOST_TEXT, type ProfileFault, type PullFault } from "@secondline/workbench";

const { say } = newRigWords;

/** What is wrong with a table from a file, in a sentence. */
export function fileFault(fault: PullFault | Exclude<ProfileFault, { kind: "unit" }>): string {
  switch (fault.kind) {
    case "empty":
    case "nothing":
    case "columnNames":
      return say(`file.${fault.kind}`);
    case "tooLong":
      return say("file.tooLong", { most: fault.most === MOST_TEXT ? "5 MB" : `${fault.most} rows` });
    case "columns":
      return say("file.columns", { row: fault.row, count: fault.count });
    case "number":
      return say("file.number", { row: fault.row, got: fault.got });
    case "datum":
      return say("ground.datum", { first: Math.round(fault.first) });
    case "backwards":
      return "row" in fault
        ? say("ground.backwards", { row: fault.row })
        : say("file.backwards", { from: formatForce(fault.from), to: formatForce(fault.to) });
  }
}
