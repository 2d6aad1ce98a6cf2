/**
 * When an assessment lapses: an event has happened to a webbing or part, or its inspection is due, and nobody has judged it
 * since. One rule, over the entries of one webbing or part. A missing date never helps: an entry without a date counts as later
 * than every inspection, and an inspection without a date does not count.
 */
import { addDays, date as dateOf } from "../dates/calendarDate.ts";
import type { WebbingEntry } from "./entries/entryKinds.ts";
import { covers } from "./openNeed.ts";
import type { PartEntry } from "./partEntries/partEntryKinds.ts";

type EntryEvent = WebbingEntry["event"] | PartEntry["event"];

/** An entry in the form that the rule takes. Dates are YYYY-MM-DD; entries stand in the order in which they were written. */
export interface DatedEntry {
  readonly event: EntryEvent;
  /** Absent: nobody knows when. */
  readonly date?: string;
  /** Last day of the event, if it took longer than one. */
  readonly until?: string;
  /** Positions on a webbing [m]; absent: all of it. */
  readonly from?: number;
  readonly to?: number;
  readonly falls?: number;
  readonly judgement?: "sound" | "doubtful" | "unfit";
  /** For an entry that hangs a webbing: it hung in the same rig before. */
  readonly again?: true;
}

/** The plan between two inspections; an absent value was not planned. */
export interface BetweenInspections {
  readonly days?: number;
  readonly falls?: number;
}

/** Cause of a lapse; `entry`: index of the entry that caused it. */
export type LapseCause =
  /** An event for which no factor is known, and which asks for an inspection. */
  | { readonly kind: "open"; readonly entry: number }
  /** Somebody judged that it must come down. */
  | { readonly kind: "unfit"; readonly entry: number }
  /** The tension was set anew, or the webbing was hung anew. */
  | { readonly kind: "tension"; readonly entry: number }
  /** More falls since the last inspection than were planned [-]. */
  | { readonly kind: "falls"; readonly falls: number; readonly planned: number }
  /** The inspection was due on `due`, YYYY-MM-DD. */
  | { readonly kind: "overdue"; readonly due: string }
  /** Inspections are planned, and there was none since the webbing or part was put up. */
  | { readonly kind: "never" };

/** Need that an entry causes once it has happened. */
type Asks = "inspection" | "inspectionOnceSet" | "nothing";

/** Every kind of entry has its line: a new one does not compile without. */
const ASKED_BY_EVENT: Readonly<Record<EntryEvent, Asks>> = {
  storm: "inspection",
  edgeContact: "inspection",
  hotRing: "inspection",
  ranHot: "inspection",
  hardFall: "inspection",
  retensioned: "inspectionOnceSet",
  rigged: "inspectionOnceSet",
  moved: "inspectionOnceSet",
  takenDown: "nothing",
  putUp: "nothing",
  replaced: "nothing",
  falls: "nothing",
  shade: "nothing",
  wet: "nothing",
  damage: "nothing",
  clamped: "nothing",
  sewn: "nothing",
  cutToLength: "nothing",
  tensionReading: "nothing",
  sagReading: "nothing",
  inspected: "nothing",
};

/** Events of entries that ask for an inspection whenever they happen. */
export const ASK_FOR_INSPECTION = (Object.keys(ASKED_BY_EVENT) as EntryEvent[]).filter(
  (event) => ASKED_BY_EVENT[event] === "inspection",
);

interface Placed extends DatedEntry {
  readonly index: number;
}

/** Entries that end earlier tensions: the webbing was hung again, or taken down. */
const ENTRIES_ENDING_TENSIONS: readonly EntryEvent[] = ["rigged", "moved", "takenDown"];
/** Entries from which on planned inspections count. */
const ENTRIES_PUTTING_UP: readonly EntryEvent[] = ["rigged", "moved", "putUp", "replaced"];

/** Everything for which a webbing or part has lapsed on a day, YYYY-MM-DD; none: it has not. Entries of later days are plans. */
export function lapseCauses(
  entries: readonly DatedEntry[],
  between: BetweenInspections,
  on: string,
): readonly LapseCause[] {
  const seen = seenBy(entries, on);
  const asks = seen.happened.flatMap((entry): LapseCause[] =>
    isClosed(entry, seen) ? [] : askedBy(entry, seen.happened),
  );
  const falls = fallsSince(seen);
  const { falls: planned } = between;
  return [
    ...asks,
    ...(planned !== undefined && falls > planned ? [{ kind: "falls", falls, planned } as const] : []),
    ...dueCauses(seen, between, on),
  ];
}

/** Falls since the last inspection of the whole webbing or part, or of its whole life [-]. */
export const fallsSinceInspection = (entries: readonly DatedEntry[], on: string): number =>
  fallsSince(seenBy(entries, on));

/** The day by which it is to be inspected again, YYYY-MM-DD; undefined where none is planned or none was made since it was put up. */
export const nextInspection = (
  entries: readonly DatedEntry[],
  between: BetweenInspections,
  on: string,
): string | undefined => dueDay(seenBy(entries, on), between);

/** Entries up to a day. */
interface Seen {
  readonly happened: readonly Placed[];
  /** Inspections with a date, and those of them that took in everything. */
  readonly inspections: readonly Placed[];
  readonly whole: readonly Placed[];
}

function seenBy(entries: readonly DatedEntry[], on: string): Seen {
  const all = entries.map((entry, index): Placed => ({ ...entry, index }));
  const happened = all.filter(({ date }) => date === undefined || date <= on);
  const inspections = happened.filter(({ event, date }) => event === "inspected" && date !== undefined);
  return { happened, inspections, whole: inspections.filter((one) => covers(one, {})) };
}

function askedBy(entry: Placed, happened: readonly Placed[]): LapseCause[] {
  if (entry.judgement === "unfit") return [{ kind: "unfit", entry: entry.index }];
  switch (ASKED_BY_EVENT[entry.event]) {
    case "nothing":
      return [];
    case "inspection":
      return [{ kind: "open", entry: entry.index }];
    case "inspectionOnceSet": {
      const first = entry.event !== "retensioned" && entry.again !== true;
      const gone = happened.some((one) => ENTRIES_ENDING_TENSIONS.includes(one.event) && isAfter(one, entry));
      return first || gone ? [] : [{ kind: "tension", entry: entry.index }];
    }
  }
}

/** Somebody inspected the webbing or part after the entry, or another part has taken its place. */
const isClosed = (entry: Placed, { happened, inspections }: Seen): boolean =>
  inspections.some((one) => covers(one, entry) && isAfter(one, entry)) || isReplaced(entry, happened);

const isReplaced = (entry: Placed, happened: readonly Placed[]): boolean =>
  happened.some((one) => one.event === "replaced" && isAfter(one, entry));

const fallsSince = ({ happened, whole }: Seen): number =>
  happened
    .filter((entry) => !whole.some((one) => isAfter(one, entry)) && !isReplaced(entry, happened))
    .reduce((sum, { falls }) => sum + (falls ?? 0), 0);

function dueDay({ happened, whole }: Seen, { days }: BetweenInspections): string | undefined {
  if (days === undefined) return undefined;
  const begun = happened.filter(({ event }) => ENTRIES_PUTTING_UP.includes(event));
  const last = whole
    .filter((one) => begun.every((entry) => isAfter(one, entry)))
    .flatMap(({ date }) => date ?? [])
    .sort()
    .at(-1);
  return last === undefined ? undefined : addDays(dateOf(last), days).toString();
}

function dueCauses(seen: Seen, between: BetweenInspections, on: string): readonly LapseCause[] {
  if (between.days === undefined) return [];
  const due = dueDay(seen, between);
  if (due === undefined) return [{ kind: "never" }];
  return due < on ? [{ kind: "overdue", due }] : [];
}

/**
 * Whether a webbing or part was inspected, or replaced, after an entry: on a later day, or on the same day and written after
 * it. An event that lasted longer than a day may have gone on after an inspection on its last day.
 */
function isAfter(later: Placed, { date, until, index }: Placed): boolean {
  if (date === undefined || later.date === undefined) return false;
  const lasted = until !== undefined && until > date;
  const end = lasted ? until : date;
  if (later.date !== end) return later.date > end;
  return !lasted && later.index > index;
}
