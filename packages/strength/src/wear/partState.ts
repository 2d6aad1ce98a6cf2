/** The state of a part other than webbing at a date. */
import type { Condition } from "@secondline/rig";
import { isBefore, type PlainDate } from "../dates/calendarDate.ts";
import type { Doubt, OpenNeed } from "./openNeed.ts";
import { partEntryKindOf } from "./partEntries/partEntryKinds.ts";
import { PartWalk } from "./partWalk.ts";
import type { PartRecord } from "./record.ts";
import type { Climate } from "./webbingState.ts";

export interface PartState {
  readonly rig: string;
  readonly part: string;
  readonly up: boolean;
  readonly condition: Condition;
  readonly falls: number;
  /** What no factor covers and nobody has judged since. */
  readonly needs: readonly OpenNeed[];
  /** Doubts that somebody wrote down after looking. */
  readonly doubts: readonly Doubt[];
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
