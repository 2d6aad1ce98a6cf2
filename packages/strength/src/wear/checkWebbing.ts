/** What a webbing's record must obey beyond its form: order of dates, places on the webbing, one clamp at a place. */
import { formatLength, type RigIssue } from "@secondline/rig";
import { date, isBefore, type PlainDate } from "../dates/calendarDate.ts";
import type { Placement, WebbingEntry, WebbingRecord } from "./record.ts";
import { type WearMark, webbingState } from "./webbingState.ts";

/** Stands for "still": later than any date in a record. */
export const END_OF_TIME = date("9999-12-31");

export function checkWebbing(webbing: WebbingRecord, path: string): RigIssue[] {
  const issues = [...orderFaults(webbing, path), ...walkFaults(webbing, path)];
  return issues.length > 0 ? issues : clampFaults(webbing, path);
}

/** Entries in order, none before the webbing was made. */
export function orderFaults(
  record: { readonly made?: PlainDate; readonly entries: readonly { readonly date: PlainDate }[] },
  path: string,
): RigIssue[] {
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
  let kept: readonly [number, number] = [0, webbing.length];
  webbing.entries.forEach((entry, i) => {
    const here = `${path}.entries[${i}]`;
    issues.push(...placeFaults(entry, kept, here));
    const hanging = placement !== undefined;
    const state = stateFault(entry, hanging, here);
    if (state !== undefined) issues.push(state);
    if (entry.event === "falls" && placement !== undefined) issues.push(...fallFaults(entry, placement, here));
    if (entry.event === "rigged" || entry.event === "moved") placement = entry.placement;
    else if (entry.event === "takenDown") placement = undefined;
    else if (entry.event === "cutToLength" && entry.from < entry.to) kept = [entry.from, entry.to];
    else if (entry.event === "retensioned" && placement !== undefined) {
      placement = pulledPlacement(placement, entry);
      issues.push(...tensionFaults(placement, kept, here));
    }
  });
  return issues;
}

function stateFault(entry: WebbingEntry, hanging: boolean, path: string): RigIssue | undefined {
  const mustHang = ["takenDown", "retensioned", "moved", "shade", "falls"].includes(entry.event);
  const mustLie = ["rigged", "cutToLength"].includes(entry.event);
  if (mustHang && !hanging) {
    return fault(
      `${path}.event`,
      entry.event,
      "a webbing that is rigged",
      `"${entry.event}", but the webbing is not rigged then.`,
    );
  }
  if (mustLie && hanging) {
    return fault(
      `${path}.event`,
      entry.event,
      "a webbing that is down",
      `"${entry.event}", but the webbing is rigged then; take it down first.`,
    );
  }
  return undefined;
}

/** Places that an entry speaks of, against what there is of the webbing. */
function placeFaults(entry: WebbingEntry, kept: readonly [number, number], path: string): RigIssue[] {
  switch (entry.event) {
    case "rigged":
    case "moved":
      return stretchFaults(entry.placement.from, entry.placement.to, kept, path);
    case "falls":
    case "cutToLength":
      return stretchFaults(entry.from, entry.to, kept, path);
    case "damage": {
      const faults = stretchFaults(entry.from, entry.to, kept, path, entry.kind === "cut");
      return faults;
    }
    case "clamped": {
      const faults = spotFaults(entry.at, kept, path);
      if (entry.until !== undefined && isBefore(entry.until, entry.date)) {
        const message = `The clamp came off on ${entry.until}, before it went on, on ${entry.date}.`;
        faults.push(fault(`${path}.until`, `${entry.until}`, `${entry.date} or later`, message));
      }
      return faults;
    }
    case "sewn":
      return spotFaults(entry.at, kept, path);
    default:
      return [];
  }
}

function stretchFaults(
  from: number,
  to: number,
  kept: readonly [number, number],
  path: string,
  point = false,
): RigIssue[] {
  const issues = [...outside(from, kept, `${path}.from`), ...outside(to, kept, `${path}.to`)];
  if (point ? to < from : to <= from) {
    issues.push(
      fault(
        `${path}.to`,
        formatLength(to),
        `more than ${formatLength(from)}`,
        `It ends at ${formatLength(to)}, before it begins at ${formatLength(from)}.`,
      ),
    );
  }
  return issues;
}

const spotFaults = (at: number, kept: readonly [number, number], path: string) => outside(at, kept, `${path}.at`);

function outside(at: number, [from, to]: readonly [number, number], path: string): RigIssue[] {
  if (from <= at && at <= to) return [];
  const range = `${formatLength(from)} to ${formatLength(to)}`;
  return [
    fault(path, formatLength(at), range, `${formatLength(at)} lies outside the webbing, of which there is ${range}.`),
  ];
}

function pulledPlacement(placement: Placement, entry: Extract<WebbingEntry, { event: "retensioned" }>): Placement {
  return placement.markedEnd === entry.end
    ? { ...placement, from: placement.from + entry.pulled }
    : { ...placement, to: placement.to - entry.pulled };
}

function tensionFaults({ from, to }: Placement, kept: readonly [number, number], path: string): RigIssue[] {
  if (from >= kept[0] && to <= kept[1] && from < to) return [];
  const got = `a loaded span of ${formatLength(from)} to ${formatLength(to)}`;
  return [
    fault(
      `${path}.pulled`,
      got,
      `within ${formatLength(kept[0])} to ${formatLength(kept[1])}`,
      `After this the span would end outside the webbing: ${got}.`,
    ),
  ];
}

/** Falls are caught on what hangs: a place outside it would be lost without a word. */
function fallFaults(
  { from, to }: Extract<WebbingEntry, { event: "falls" }>,
  placement: Placement,
  path: string,
): RigIssue[] {
  if (from < placement.to && to > placement.from) return [];
  const [got, loaded] = [
    [from, to],
    [placement.from, placement.to],
  ].map(([a, b]) => `${formatLength(a!)} to ${formatLength(b!)}`);
  const message = `Falls at ${got}, but what hangs then is ${loaded} of the webbing.`;
  return [fault(`${path}.from`, got!, `a place within ${loaded}`, message)];
}

/** Two clamps at one place at one time. */
function clampFaults(webbing: WebbingRecord, path: string): RigIssue[] {
  const entries = webbing.entries.filter((entry) => entry.event !== "cutToLength");
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

export function fault(path: string, got: string, expected: string, message: string): RigIssue {
  return { path, got, expected, message };
}
