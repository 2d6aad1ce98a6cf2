/** The state of a webbing at a date, from its record: its marks with their places, and its months outside. */
import { isBefore, type PlainDate } from "../dates/calendarDate.ts";
import type { Climate } from "../derating/sunDose.ts";
import { entryKindOf } from "./entries/entryKinds.ts";
import type { InspectionDoubt, OpenNeed } from "./openNeed.ts";
import type { Placement } from "./placement.ts";
import type { RecordReach } from "./reach.ts";
import type { LineReading } from "./readings/lineReading.ts";
import type { DamageKind, WebbingRecord } from "./record.ts";
import { WebbingWalk } from "./webbingWalk.ts";

/** Something that weakens a stretch of webbing; positions from the marked end [m]. */
export type WearMark = { readonly from: number; readonly to: number; readonly since: PlainDate } & (
  | {
      readonly kind: "clampMark";
      readonly months: number;
      readonly load?: number;
      /** Absent while it still sits in the clamp. */
      readonly until?: PlainDate;
      /** Left by the weblock at an end of a loaded span. */
      readonly weblock?: true;
    }
  | { readonly kind: "fallZone"; readonly falls: number }
  | { readonly kind: "stitching" }
  | { readonly kind: DamageKind; readonly depth: number }
);

export interface WebbingState {
  readonly id: string;
  readonly name: string;
  readonly mark: string;
  /** Extent of the remaining webbing, positions from the marked end as new [m]. */
  readonly from: number;
  readonly to: number;
  readonly ageYears?: number;
  /** Months outside that the record counts, whatever came before it [-]. */
  readonly monthsOutside: number;
  /** The same as months of full sun in an average month [-]. */
  readonly sunMonths: number;
  /** Absent: the record never said whether it is wet. */
  readonly wet?: boolean;
  /** Placement of the webbing, with its first day; absent when the webbing is down. */
  readonly placement?: Placement & { readonly since: PlainDate };
  readonly marks: readonly WearMark[];
  /** Calendar months in the clamp that holds it now, by anchor side [-]. */
  readonly clampedMonths: { readonly A?: number; readonly B?: number };
  /** Events that no factor covers and nobody has judged since. */
  readonly needs: readonly OpenNeed[];
  /** Doubts that somebody wrote down after looking. */
  readonly doubts: readonly InspectionDoubt[];
  /** Readings since the tension was last changed, the latest at the end. */
  readonly readings: readonly LineReading[];
  readonly reach: RecordReach;
}

/** State after everything dated on or before `on`. The record must have passed its checks. */
export function webbingState(record: WebbingRecord, on: PlainDate, climate: Climate): WebbingState {
  const walk = new WebbingWalk(record, climate);
  for (const entry of record.entries) {
    if (isBefore(on, entry.date)) break;
    walk.weather(entry.date);
    entryKindOf(entry.event).apply(entry, walk);
  }
  return walk.finish(on);
}
