/** What a webbing's record must obey beyond its form: order of dates, places on the webbing, one clamp at a place. */
import { formatLength, type RigIssue } from "@secondline/rig";
import { date, isBefore, type PlainDate } from "../dates/calendarDate.ts";
import type { Whereabouts } from "./entries/entryKind.ts";
import { entryKindOf, type WebbingEntry } from "./entries/entryKinds.ts";
import { fault, type Kept } from "./faults.ts";
import { type Placement, pulledPlacement } from "./placement.ts";
import type { Beginning } from "./reach.ts";
import type { WebbingRecord } from "./record.ts";
import { type WearMark, webbingState } from "./webbingState.ts";

/** Stands for "still": later than any date in a record. */
export const END_OF_TIME = date("9999-12-31");

export function checkWebbing(webbing: WebbingRecord, path: string): RigIssue[] {
  const issues = [...orderFaults(webbing, path), ...walkFaults(webbing, path)];
  return issues.length > 0 ? issues : clampFaults(webbing, path);
}

interface Dated extends Beginning {
  readonly entries: readonly { readonly event: string; readonly date: PlainDate }[];
}

/** Entries in order, none before the webbing was made, and no use of it before its first. */
export function orderFaults(record: Dated, path: string): RigIssue[] {
  return [...firstUseFaults(record, path), ...entryOrderFaults(record, path)];
}

/** What cannot be written down of something that lies unused. */
const USES: ReadonlySet<string> = new Set(["rigged", "moved", "putUp", "falls", "clamped", "hardFall", "storm"]);

function firstUseFaults({ made, firstUse, entries }: Dated, path: string): RigIssue[] {
  if (firstUse === undefined) return [];
  const here = `${path}.firstUse`;
  if (made !== undefined && isBefore(firstUse, made)) {
    const message = `It was first used on ${firstUse}, before it was made, on ${made}.`;
    return [fault(here, `${firstUse}`, `${made} or later`, message)];
  }
  const used = entries.find(({ event, date }) => USES.has(event) && isBefore(date, firstUse));
  if (used === undefined) return [];
  const message = `"${used.event}" on ${used.date}, but its first use is said to be on ${firstUse}.`;
  return [fault(here, `${firstUse}`, `${used.date} or earlier`, message)];
}

function entryOrderFaults(record: Dated, path: string): RigIssue[] {
  return record.entries.flatMap((entry, i) => {
    const before = i > 0 ? record.entries[i - 1]!.date : record.made;
    if (before === undefined || !isBefore(entry.date, before)) return [];
    const other = i > 0 ? `the entry before it, ${before}` : `the day it was made, ${before}`;
    return [
      fault(
        `${path}.entries[${i}].date`,
        `${entry.date}`,
        `${before} or later`,
        `${entry.date} lies before ${other}; entries are in order of date.`,
      ),
    ];
  });
}

function walkFaults(webbing: WebbingRecord, path: string): RigIssue[] {
  const issues: RigIssue[] = [];
  let placement: Placement | undefined;
  let kept: Kept = [0, webbing.length];
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

function whereFaults({ event }: WebbingEntry, where: Whereabouts, hanging: boolean, path: string): RigIssue[] {
  switch (where) {
    case "anywhere":
      return [];
    case "hanging": {
      if (hanging) return [];
      const message = `"${event}", but the webbing is not rigged then.`;
      return [fault(`${path}.event`, event, "a webbing that is rigged", message)];
    }
    case "down": {
      if (!hanging) return [];
      const message = `"${event}", but the webbing is rigged then; take it down first.`;
      return [fault(`${path}.event`, event, "a webbing that is down", message)];
    }
  }
}

/** Two clamps at one place at one time. */
function clampFaults(webbing: WebbingRecord, path: string): RigIssue[] {
  const entries = webbing.entries.flatMap((entry) => (entry.event === "cutToLength" ? [] : [statedClamps(entry)]));
  const last = entries.at(-1)?.date;
  if (last === undefined) return [];
  // A year past the last entry: the state then shows every clamp there was, those that came off later too.
  const { marks } = webbingState({ ...webbing, entries }, last.add({ years: 1 }), {
    latitude: "middle",
    hemisphere: "north",
  });
  const clamps = marks.filter((mark) => mark.kind === "clampMark");
  const issues: RigIssue[] = [];
  clamps.forEach((a, i) => {
    const b = clamps.slice(0, i).find((other) => overlapInPlace(a, other) && overlapInTime(a, other));
    if (b === undefined) return;
    const at = (m: WearMark) => `${formatLength((m.from + m.to) / 2)} from ${m.since}`;
    issues.push(
      fault(
        `${path}.entries[${entryOf(webbing, a)}]`,
        `two clamps: at ${at(b)} and at ${at(a)}`,
        "one clamp at a place at a time",
        `"${webbing.name}" sits in two clamps at once: at ${at(b)} and at ${at(a)}.`,
      ),
    );
  });
  return issues;
}

/** Clamps that are only assumed contradict nobody. */
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
