/** The rules that a part's record must obey beyond its form. */
import { orderFaults } from "./checkWebbing.ts";
import { type RecordIssue, recordFault } from "./faults.ts";
import { partEntryKindOf } from "./partEntries/partEntryKinds.ts";
import type { PartRecord } from "./record.ts";
import { recordFact } from "./recordFacts.ts";

export function checkPart(part: PartRecord, path: string): RecordIssue[] {
  const issues = orderFaults(part, path);
  let up = false;
  part.entries.forEach((entry, i) => {
    const here = `${path}.entries[${i}]`;
    const { where, faults } = partEntryKindOf(entry.event);
    if (where === "down" && up) {
      issues.push(
        recordFault(`${here}.event`, entry.event, recordFact("expected.downPart", {}), recordFact("part.upTwice", {})),
      );
    }
    if (where === "up" && !up) {
      const message = recordFact("part.notUp", { event: `"${entry.event}"` });
      issues.push(recordFault(`${here}.event`, entry.event, recordFact("expected.upPart", {}), message));
    }
    issues.push(...(faults?.(entry, here) ?? []));
    if (entry.event === "putUp") up = true;
    if (entry.event === "takenDown") up = false;
  });
  return issues;
}
