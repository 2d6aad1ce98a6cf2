/** The rules that a webbing's record must obey beyond its form: order of dates, places on the webbing, one clamp at a place. */
import { date, isBefore, type PlainDate } from "../dates/calendarDate.ts";
import type { Whereabouts } from "./entries/entryKind.ts";
import { entryKindOf, type WebbingEntry } from "./entries/entryKinds.ts";
import { type RecordIssue, type RemainingWebbing, recordFault } from "./faults.ts";
import { type Placement, pulledPlacement } from "./placement.ts";
import type { Beginning } from "./reach.ts";
import type { WebbingRecord } from "./record.ts";
import { recordFact } from "./recordFacts.ts";
import { type WearMark, webbingState } from "./webbingState.ts";

/** End of a stay that goes on: later than any date in a record. */
export const END_OF_TIME = date("9999-12-31");

export function checkWebbing(webbing: WebbingRecord, path: string): RecordIssue[] {
  const issues = [...orderFaults(webbing, path), ...walkFaults(webbing, path)];
  return issues.length > 0 ? issues : clampFaults(webbing, path);
}

interface Dated extends Beginning {
  readonly entries: readonly { readonly event: string; readonly date: PlainDate }[];
}

/** Checks that entries are in order, that none is before the webbing was made, and that no use is before its first use. */
export function orderFaults(record: Dated, path: string): RecordIssue[] {
  return [...firstUseFaults(record, path), ...entryOrderFaults(record, path)];
}

/** Entries that a webbing or part cannot have before its first use. */
const ENTRIES_OF_USE: ReadonlySet<string> = new Set([
  "rigged",
  "moved",
  "putUp",
  "falls",
  "clamped",
  "hardFall",
  "storm",
]);

function firstUseFaults({ made, firstUse, entries }: Dated, path: string): RecordIssue[] {
  if (firstUse === undefined) return [];
  const here = `${path}.firstUse`;
  if (made !== undefined && isBefore(firstUse, made)) {
    const message = recordFact("firstUse.beforeMade", { firstUse: { day: `${firstUse}` }, made: { day: `${made}` } });
    return [recordFault(here, `${firstUse}`, recordFact("expected.later", { date: `${made}` }), message)];
  }
  const used = entries.find(({ event, date }) => ENTRIES_OF_USE.has(event) && isBefore(date, firstUse));
  if (used === undefined) return [];
  const values = { event: `"${used.event}"`, date: { day: `${used.date}` }, firstUse: { day: `${firstUse}` } };
  const expected = recordFact("expected.earlier", { date: `${used.date}` });
  return [recordFault(here, `${firstUse}`, expected, recordFact("firstUse.usedBefore", values))];
}

function entryOrderFaults(record: Dated, path: string): RecordIssue[] {
  return record.entries.flatMap((entry, i) => {
    const before = i > 0 ? record.entries[i - 1]!.date : record.made;
    if (before === undefined || !isBefore(entry.date, before)) return [];
    const message = recordFact(i > 0 ? "order.entry" : "order.made", {
      date: { day: `${entry.date}` },
      before: { day: `${before}` },
    });
    const expected = recordFact("expected.later", { date: `${before}` });
    return [recordFault(`${path}.entries[${i}].date`, `${entry.date}`, expected, message)];
  });
}

function walkFaults(webbing: WebbingRecord, path: string): RecordIssue[] {
  const issues: RecordIssue[] = [];
  let placement: Placement | undefined;
  let kept: RemainingWebbing = [0, webbing.length];
  webbing.entries.forEach((entry, i) => {
    const here = `${path}.entries[${i}]`;
    const { where, faults } = entryKindOf(entry.event);
    issues.push(...(faults?.(entry, { path: here, kept, ...(placement === undefined ? {} : { placement }) }) ?? []));
    issues.push(...whereFaults(entry, where, placement !== undefined, here));
    if (entry.event === "rigged" || entry.event === "moved") placement = entry.placement;
    else if (entry.event === "takenDown") placement = undefined;
    else if (entry.event === "cutToLength" && entry.from < entry.to) kept = [entry.from, entry.to];
    else if (entry.event === "retensioned" && placement !== undefined) {
      placement = pulledPlacement(placement, entry.end, entry.pulled);
    }
  });
  return issues;
}

function whereFaults({ event }: WebbingEntry, where: Whereabouts, hanging: boolean, path: string): RecordIssue[] {
  switch (where) {
    case "anywhere":
      return [];
    case "hanging": {
      if (hanging) return [];
      const message = recordFact("event.notRigged", { event: `"${event}"` });
      return [recordFault(`${path}.event`, event, recordFact("expected.rigged", {}), message)];
    }
    case "down": {
      if (!hanging) return [];
      const message = recordFact("event.rigged", { event: `"${event}"` });
      return [recordFault(`${path}.event`, event, recordFact("expected.down", {}), message)];
    }
  }
}

/** Two clamps at one place at one time. */
function clampFaults(webbing: WebbingRecord, path: string): RecordIssue[] {
  const entries = webbing.entries.flatMap((entry) => (entry.event === "cutToLength" ? [] : [statedClamps(entry)]));
  const last = entries.at(-1)?.date;
  if (last === undefined) return [];
  // The state a year past the last entry shows every clamp, those that came off later too.
  const { marks } = webbingState({ ...webbing, entries }, last.add({ years: 1 }), {
    latitude: "middle",
    hemisphere: "north",
  });
  const clamps = marks.filter((mark) => mark.kind === "clampMark");
  const issues: RecordIssue[] = [];
  clamps.forEach((a, i) => {
    const b = clamps.slice(0, i).find((other) => overlapInPlace(a, other) && overlapInTime(a, other));
    if (b === undefined) return;
    const at = (m: WearMark) =>
      recordFact("place.clamp", { at: { length: (m.from + m.to) / 2 }, since: { day: `${m.since}` } });
    const values = { first: at(b), second: at(a) };
    issues.push(
      recordFault(
        `${path}.entries[${entryOf(webbing, a)}]`,
        recordFact("got.clamps", values),
        recordFact("expected.oneClamp", {}),
        recordFact("clamps.two", { name: webbing.name, ...values }),
      ),
    );
  });
  return issues;
}

/** Clamps that are only assumed are no contradiction. */
function statedClamps(entry: WebbingEntry): WebbingEntry {
  if ((entry.event !== "rigged" && entry.event !== "moved") || entry.placement.clampsAssumed !== true) return entry;
  return { ...entry, placement: { ...entry.placement, clampedAt: [] } };
}

/** Index of the entry that put a clamp on. */
function entryOf({ entries }: WebbingRecord, clamp: Clamp): number {
  const puts = ["clamped", "rigged", "moved", "retensioned"];
  return entries.findIndex(
    (e) => puts.includes(e.event) && !isBefore(e.date, clamp.since) && !isBefore(clamp.since, e.date),
  );
}

type Clamp = Extract<WearMark, { kind: "clampMark" }>;
const overlapInPlace = (a: Clamp, b: Clamp) => a.from < b.to && b.from < a.to;
const endOf = (clamp: Clamp) => clamp.until ?? END_OF_TIME;
const overlapInTime = (a: Clamp, b: Clamp) => isBefore(a.since, endOf(b)) && isBefore(b.since, endOf(a));
