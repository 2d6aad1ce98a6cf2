/** How far back a record goes. It follows a webbing or part from new only if it begins by the day of its first use. */
import { isBefore, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";

export interface RecordReach {
  /** True when nothing came before the record, or a new part has taken the place since. */
  readonly fromNew: boolean;
  /** Day of its first entry, or on which a new part took the place; absent: there is none by the day that counts. */
  readonly begun?: PlainDate;
  /** From that day to the day that counts [months]. */
  readonly months: number;
}

/** What a record says of the beginning of a webbing or part. */
export interface Beginning {
  readonly made?: PlainDate;
  /** Until this day it lay unused. */
  readonly firstUse?: PlainDate;
}

/** `begun`: day of the first entry by the day `on`. Without a day of first use it may have been used since it was made. */
export function reachOf({ made, firstUse }: Beginning, begun: PlainDate | undefined, on: PlainDate): RecordReach {
  if (begun === undefined) return { fromNew: false, months: 0 };
  const used = firstUse ?? made;
  return { fromNew: used !== undefined && !isBefore(used, begun), begun, months: monthsBetween(begun, on) };
}
