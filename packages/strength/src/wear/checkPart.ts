/** What a part's record must obey beyond its form. */
import type { RigIssue } from "@secondline/rig";
import { orderFaults } from "./checkWebbing.ts";
import { fault } from "./faults.ts";
import { partEntryKindOf } from "./partEntries/partEntryKinds.ts";
import type { PartRecord } from "./record.ts";

export function checkPart(part: PartRecord, path: string): RigIssue[] {
  const issues = orderFaults(part, path);
  let up = false;
  part.entries.forEach((entry, i) => {
    const here = `${path}.entries[${i}]`;
    const { where, faults } = partEntryKindOf(entry.event);
    if (where === "down" && up) {
      issues.push(
        fault(`${here}.event`, entry.event, "a part that is down", "The part is put up, but it is up already."),
      );
    }
    if (where === "up" && !up) {
      const message = `"${entry.event}", but the part is not up then.`;
      issues.push(fault(`${here}.event`, entry.event, "a part that is up", message));
    }
    issues.push(...(faults?.(entry, here) ?? []));
    if (entry.event === "putUp") up = true;
    if (entry.event === "takenDown") up = false;
  });
  return issues;
}
