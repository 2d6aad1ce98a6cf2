/** A webbing's or part's entries on a calendar: when it hung, and what was written down on which day. */

import { rowsOf, type Scale } from "@secondline/figures";
import { dayText } from "@secondline/words/dates";
import { sayRecord } from "@secondline/words/page/record";
import { sayWear } from "@secondline/words/page/wear";
import type { WrittenEntry } from "../documents/documents.ts";
import { dayOf, isoOf } from "../wear/days.ts";
import { type EntryFormKind, entryWords } from "./entryKinds.ts";
import { shortLabel } from "./lanes.ts";

export interface Stay {
  readonly from: number;
  /** Undefined: it hangs still. */
  readonly to: number | undefined;
  readonly label: string;
  /** The label with its dates. */
  readonly title: string;
}

export interface CalendarEntry {
  readonly entry: number;
  readonly day: number;
  readonly event: string;
  readonly label: string;
  readonly words: string;
}

const HANGS = ["rigged", "moved", "putUp"];

/** Times during which it hung. */
export function staysOf(entries: readonly WrittenEntry[]): Stay[] {
  const stays: Stay[] = [];
  let open: { from: number; label: string } | undefined;
  for (const entry of entries) {
    const day = dayOf(entry.date);
    if (day === undefined || !(HANGS.includes(entry.event) || entry.event === "takenDown")) continue;
    if (open) stays.push(stayOf(open, day));
    open =
      entry.event === "takenDown"
        ? undefined
        : { from: day, label: entry.event === "putUp" ? sayRecord("calendar.up") : shortLabel(entry) };
  }
  if (open) stays.push(stayOf(open, undefined));
  return stays;
}

function stayOf(open: Pick<Stay, "from" | "label">, to: number | undefined): Stay {
  const day = (of: number) => dayText(isoOf(of));
  const title = sayWear("calendarPaper.span", {
    label: open.label,
    from: day(open.from),
    to: to === undefined ? sayWear("calendarPaper.now") : day(to),
  });
  return { ...open, to, title };
}

export function datedOf(entries: readonly WrittenEntry[], kinds: readonly EntryFormKind[]): CalendarEntry[] {
  return entries.flatMap((entry, i) => {
    const day = dayOf(entry.date);
    if (day === undefined) return [];
    const { event } = entry;
    const label =
      event === "putUp" || event === "rigged" || event === "moved" ? sayRecord(`calendar.${event}`) : shortLabel(entry);
    return [{ entry: i, day, event: entry.event, label, words: entryWords(kinds, entry) }];
  });
}

/** First and last day of the axis: all entries, the day shown, what is to come, and some air. */
export function calendarSpan(days: readonly number[], on: number, ahead: readonly number[]): [number, number] {
  const first = Math.min(on - 60, ...days);
  const last = Math.max(on + 120, ...days, ...ahead.filter((day) => day <= on + 760));
  const air = Math.max(15, (last - first) * 0.03);
  return [first - air, last + air];
}

export interface PlacedDate extends CalendarEntry {
  readonly row: number;
  /** Its label stands to the left of its mark. */
  readonly left: boolean;
}

/** Places the dates in as few rows as leave every mark free, with its label if `labels` is set. `width`: of the drawing [px]. */
export function placeDates(dated: readonly CalendarEntry[], x: Scale, labels: boolean, width: number): PlacedDate[] {
  const reach = dated.map(({ day, label }) => {
    const at = x.px(day);
    const room = labels ? label.length * 6.3 + 6 : 0;
    const left = at + 14 + room > width;
    return left ? { from: at - 13 - room, to: at + 13 } : { from: at - 13, to: at + 13 + room };
  });
  const rows = rowsOf(reach, 3);
  return dated.map((one, i) => ({ ...one, row: rows[i] ?? 0, left: (reach[i]?.from ?? 0) < x.px(one.day) - 14 }));
}
