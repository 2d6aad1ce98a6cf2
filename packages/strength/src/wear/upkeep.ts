/** The upkeep of a rig on a day by its wear record: lapses, the day of the next inspection, and the falls still planned. */
import type { FactValue, Rig } from "@secondline/rig";
import { isBefore, type PlainDate } from "../dates/calendarDate.ts";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import { entryKindOf } from "./entries/entryKinds.ts";
import {
  type BetweenInspections,
  type DatedEntry,
  fallsSinceInspection,
  type LapseCause,
  lapseCauses,
  nextInspection,
} from "./lapse.ts";
import { needFacts } from "./needWords.ts";
import type { OpenNeed } from "./openNeed.ts";
import { partEntryKindOf } from "./partEntries/partEntryKinds.ts";
import { PartWalk } from "./partWalk.ts";
import type { PartRecord, WearRecord, WebbingRecord } from "./record.ts";
import { rigMatch } from "./rigReference.ts";
import { webbingState } from "./webbingState.ts";
import { WebbingWalk } from "./webbingWalk.ts";

/** A cause of a lapse, with its webbing or part. */
export type Lapse = {
  /** The webbing's name in the record, or the part's id. */
  readonly of: { readonly webbing: string } | { readonly part: string };
} & (
  | { readonly kind: "open" | "unfit"; readonly sentence: NoteFact }
  | { readonly kind: "tension"; readonly on: string }
  | Exclude<LapseCause, { readonly entry: number }>
);

export interface Upkeep {
  readonly lapses: readonly Lapse[];
  /**
   * The first day by which a webbing or part is to be inspected again, YYYY-MM-DD; absent: nobody said how often, or one was
   * never inspected.
   */
  readonly nextInspection?: string;
  /**
   * Falls that are left of those planned between two inspections, for the webbing or part with the fewest [-]; absent: none are
   * planned.
   */
  readonly plannedFallsLeft?: number;
  /** Ids of the parts, besides webbing, that the record follows; absent: none. */
  readonly parts?: readonly string[];
  /** The first later day with an entry about webbing or parts of the rig, YYYY-MM-DD; absent: there is none. */
  readonly nextEntry?: string;
  /** The last day, up to the day that counts, of which the record says something of the same, YYYY-MM-DD; absent: of none. */
  readonly lastEntry?: string;
}

type Entry = WebbingRecord["entries"][number] | PartRecord["entries"][number];

/** A webbing or part that belongs to the rig on the day. */
interface Item {
  readonly of: Lapse["of"];
  readonly entries: readonly DatedEntry[];
  /** Need of the entry with that index. */
  readonly asked: (entry: number) => NoteFact;
}

/** `record` as read; `on`: the day that counts. Looks at the webbings that hang in the rig on that day and at its parts. */
export function upkeepOf(rig: Rig, record: WearRecord, on: PlainDate): Upkeep {
  const plan = record.plans.find((one) => rigMatch(rig, one.rig) !== undefined);
  const { inspectEveryDays: days, falls } = plan ?? {};
  const between: BetweenInspections = {
    ...(days === undefined ? {} : { days }),
    ...(falls === undefined ? {} : { falls }),
  };
  const day = on.toString();
  const items = itemsOf(rig, record, on);
  const lapses = items.flatMap((item) =>
    onceSet(lapseCauses(item.entries, between, day)).map((cause) => lapseOf(item, cause)),
  );
  const due = items.map(({ entries }) => nextInspection(entries, between, day));
  const parts = items.flatMap(({ of }) => ("part" in of ? [of.part] : []));
  const first = due.every((one) => one !== undefined) ? [...due].sort()[0] : undefined;
  const { last, next } = entriesAround(rig, record, on);
  return {
    lapses,
    ...(first === undefined ? {} : { nextInspection: first }),
    ...(parts.length === 0 ? {} : { parts }),
    ...(next === undefined ? {} : { nextEntry: next }),
    ...(last === undefined ? {} : { lastEntry: last }),
    ...(falls === undefined || items.length === 0
      ? {}
      : {
          plannedFallsLeft: Math.max(
            0,
            Math.floor(falls - Math.max(...items.map(({ entries }) => fallsSinceInspection(entries, day)))),
          ),
        }),
  };
}

/** Days of entries of what hangs in the rig on the day or belongs to it: the last one up to the day, and the first one after it. */
function entriesAround(
  rig: Rig,
  record: WearRecord,
  on: PlainDate,
): { readonly last: string | undefined; readonly next: string | undefined } {
  const hanging = record.webbings.filter((webbing) => {
    const { placement } = webbingState(webbing, on, record);
    return placement !== undefined && rigMatch(rig, placement.rig) !== undefined;
  });
  const followed: readonly { readonly entries: readonly Entry[] }[] = [
    ...hanging,
    ...record.parts.filter((part) => isOf(part, rig)),
  ];
  const days = followed.flatMap(({ entries }) => entries.map(({ date }) => date.toString())).sort();
  const day = on.toString();
  return { last: days.filter((one) => one <= day).at(-1), next: days.find((one) => one > day) };
}

function itemsOf(rig: Rig, record: WearRecord, on: PlainDate): readonly Item[] {
  const hanging = record.webbings.flatMap((webbing): Item[] => {
    const { placement, from, to } = webbingState(webbing, on, record);
    if (!placement || rigMatch(rig, placement.rig) === undefined) return [];
    return [
      {
        of: { webbing: webbing.name },
        entries: webbing.entries.map((entry, i) => ofWebbing(entry, { rig, webbing, index: i, kept: [from, to] })),
        asked(index) {
          const walk = new WebbingWalk(webbing, record);
          const entry = webbing.entries[index]!;
          entryKindOf(entry.event).apply(entry, walk);
          return factOf(webbing.name, walk.finish(on));
        },
      },
    ];
  });
  const parts = record.parts.filter((part) => isOf(part, rig) && part.entries.some(({ date }) => !isBefore(on, date)));
  return [...hanging, ...parts.map((part) => partItem(part, record, on))];
}

/** The last of several settings of one tension: both ends are often pulled on one day. */
const onceSet = (causes: readonly LapseCause[]): readonly LapseCause[] =>
  causes.filter((one, i) => one.kind !== "tension" || !causes.slice(i + 1).some(({ kind }) => kind === "tension"));

const isOf = (part: PartRecord, rig: Rig): boolean => rigMatch(rig, part.rig) !== undefined;

const partItem = (part: PartRecord, record: WearRecord, on: PlainDate): Item => ({
  of: { part: part.part },
  entries: part.entries.map(datedEntry),
  asked(index) {
    const walk = new PartWalk(part, record);
    const entry = part.entries[index]!;
    partEntryKindOf(entry.event).apply(entry, walk);
    return factOf(noteFact("part.named", { part: part.part }), walk.finish(on));
  },
});

const factOf = (name: FactValue, { needs }: { readonly needs: readonly OpenNeed[] }): NoteFact =>
  needFacts({ name, needs })[0]!;

/** Entries in the form that the rule takes, with dates as text. */
function datedEntry(entry: Entry): DatedEntry {
  const { event, date } = entry;
  return {
    event,
    date: date.toString(),
    ...("until" in entry && entry.until !== undefined ? { until: entry.until.toString() } : {}),
    ...("falls" in entry ? { falls: entry.falls } : {}),
    ...(entry.event === "inspected" ? { judgement: entry.judgement } : {}),
  };
}

interface EntryOf {
  readonly rig: Rig;
  readonly webbing: WebbingRecord;
  readonly index: number;
  /** Extent of the webbing on the day [m]. */
  readonly kept: readonly [number, number];
}

/** For a webbing, places count, and whether it hung in the same rig before. */
function ofWebbing(entry: WebbingRecord["entries"][number], { rig, webbing, index, kept }: EntryOf): DatedEntry {
  const hangsHere = (one: WebbingRecord["entries"][number]) =>
    (one.event === "rigged" || one.event === "moved") && rigMatch(rig, one.placement.rig) !== undefined;
  if (hangsHere(entry)) {
    const again = webbing.entries.slice(0, index).some(hangsHere);
    return { ...datedEntry(entry), ...(again ? { again } : {}) };
  }
  const { from, to } = entry as { readonly from?: number; readonly to?: number };
  const [first, last] = kept;
  // An inspection of all of the remaining webbing is one of the whole webbing.
  if (entry.event === "inspected" && (from ?? first) <= first && (to ?? last) >= last) return datedEntry(entry);
  return { ...datedEntry(entry), ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
}

function lapseOf({ of, entries, asked }: Item, cause: LapseCause): Lapse {
  switch (cause.kind) {
    case "open":
    case "unfit":
      return { of, kind: cause.kind, sentence: asked(cause.entry) };
    case "tension":
      return { of, kind: "tension", on: entries[cause.entry]!.date! };
    case "falls":
    case "overdue":
    case "never":
      return { of, ...cause };
  }
}
