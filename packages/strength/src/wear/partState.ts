/** The state of a part other than webbing at a date. */
import type { Condition } from "@secondline/rig";
import { isBefore, type PlainDate } from "../dates/calendarDate.ts";
import type { Climate } from "../derating/sunDose.ts";
import type { InspectionDoubt, OpenNeed } from "./openNeed.ts";
import { partEntryKindOf } from "./partEntries/partEntryKinds.ts";
import { PartWalk } from "./partWalk.ts";
import type { RecordReach } from "./reach.ts";
import type { PartRecord } from "./record.ts";

export interface PartState {
  readonly rig: string;
  readonly part: string;
  readonly up: boolean;
  /** Whether the record says when the part was up. */
  readonly placed: boolean;
  /** Day on which a new part took its place, YYYY-MM-DD; absent: none did. */
  readonly replacedOn?: string;
  /** Condition over the part's whole life; values that the record does not know are left out. */
  readonly condition: Condition;
  /** Falls of its whole life [-]; absent: the record does not know. */
  readonly falls?: number;
  /** Counts of the record alone, whatever came before it. */
  readonly recorded: { readonly monthsOutside: number; readonly sunMonths: number; readonly falls: number };
  readonly reach: RecordReach;
  /** Events that no factor covers and nobody has judged since. */
  readonly needs: readonly OpenNeed[];
  /** Doubts that somebody wrote down after looking. */
  readonly doubts: readonly InspectionDoubt[];
}

/** State after everything dated on or before `on`. */
export function partState(record: PartRecord, on: PlainDate, climate: Climate): PartState {
  const walk = new PartWalk(record, climate);
  for (const entry of record.entries) {
    if (isBefore(on, entry.date)) break;
    walk.weather(entry.date);
    partEntryKindOf(entry.event).apply(entry, walk);
  }
  return walk.finish(on);
}
