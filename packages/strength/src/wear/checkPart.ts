/** What a part's record must obey beyond its form. */
import type { RigIssue } from "@secondline/rig";
import { fault, orderFaults } from "./checkWebbing.ts";
import type { PartRecord } from "./record.ts";

export function checkPart(part: PartRecord, path: string): RigIssue[] {
  const issues = orderFaults(part, path);
  let up = false;
  part.entries.forEach((entry, i) => {
    const here = `${path}.entries[${i}].event`;
    if (entry.event === "putUp") {
      if (up) issues.push(fault(here, "putUp", "a part that is down", "The part is put up, but it is up already."));
      up = true;
    } else if (entry.event === "takenDown" || entry.event === "shade") {
      if (!up)
        issues.push(fault(here, entry.event, "a part that is up", `"${entry.event}", but the part is not up then.`));
      if (entry.event === "takenDown") up = false;
    }
  });
  return issues;
}
