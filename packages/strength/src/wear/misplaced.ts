/** Webbing that a record hangs, on a day, in a section that the rig does not have: its wear would count nowhere. */
import type { FactsOf, Rig } from "@secondline/rig";
import { date, isBefore, type PlainDate } from "../dates/calendarDate.ts";
import { type RecordIssue, recordFault } from "./faults.ts";
import type { Placement } from "./placement.ts";
import type { WearRecord, WebbingRecord } from "./record.ts";
import { type RecordFacts, recordFact } from "./recordFacts.ts";
import { rigMatch } from "./rigReference.ts";
import { webbingState } from "./webbingState.ts";

/** `on`: calendar date YYYY-MM-DD. Paths are those of the record. */
export function misplacedIssues(rig: Rig, record: WearRecord, on: string): RecordIssue[] {
  const day = date(on);
  return record.webbings.flatMap((webbing, i) => {
    const { placement } = webbingState(webbing, day, record);
    if (placement === undefined || rigMatch(rig, placement.rig) === undefined) return [];
    const message = missingSection(rig, placement, webbing.name);
    if (message === undefined) return [];
    const path = `webbings[${i}].entries[${lastHung(webbing, day)}].section`;
    const count = rig[placement.line]!.sections.length;
    const expected = count === 1 ? "0" : recordFact("range", { from: 0, to: count - 1 });
    return [recordFault(path, `${placement.section}`, expected, message)];
  });
}

/** The fact about a section that the rig does not have; undefined if the rig has the section, or lacks the whole line. */
export function missingSection(rig: Rig, { line, section }: Placement, name: string): MissingSection | undefined {
  const count = rig[line]?.sections.length;
  if (count === undefined || section < count) return undefined;
  const hung = { name, section, line: recordFact(`line.${line}`, {}) };
  return count === 1
    ? recordFact("webbing.noSection", hung)
    : recordFact("webbing.noSectionOfMany", { ...hung, count, last: count - 1 });
}

export type MissingSection = FactsOf<Pick<RecordFacts, "webbing.noSection" | "webbing.noSectionOfMany">>;

function lastHung({ entries }: WebbingRecord, on: PlainDate): number {
  return entries.findLastIndex(
    ({ event, date: day }) => (event === "rigged" || event === "moved") && !isBefore(on, day),
  );
}
