/** How far back a record goes. It follows a webbing or part from new only if it begins by the day of its first use. */
import { isBefore, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";

export interface RecordReach {
  /** True when nothing came before the record, or a new part has taken the place since. */
  readonly fromNew: boolean;
  /** Day of the first entry, or on which a new part took the place; absent: there is none by the day of the state. */
  readonly begun?: PlainDate;
  /** Time from that day to the day of the state [months]. */
  readonly months: number;
}

/** Dates in a record about the beginning of a webbing or part. */
export interface Beginning {
  readonly made?: PlainDate;
  /** Until this day the webbing or part lay unused. */
  readonly firstUse?: PlainDate;
}

/**
 * `begun`: day of the first entry by the day `on`. Without a day of first use, the webbing or part may have been used since it
 * was made.
 */
export function reachOf({ made, firstUse }: Beginning, begun: PlainDate | undefined, on: PlainDate): RecordReach {
  if (begun === undefined) return { fromNew: false, months: 0 };
  const used = firstUse ?? made;
  return { fromNew: used !== undefined && !isBefore(used, begun), begun, months: monthsBetween(begun, on) };
}
