/** The state of a webbing at a date, from its record: what lies where on it, and how long it has been outside. */
import { addDays, isBefore, monthShares, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";
import { type Hemisphere, type LatitudeClass, monthDose } from "../derating/sunDose.ts";
import type { DamageKind, Placement, WebbingEntry, WebbingRecord } from "./record.ts";

/** Length of webbing that a weblock marks, half to either side of where the loaded span ends [m]. Assumed. */
export const WEBLOCK_MARK = 0.15;

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
  /** What is left of the webbing, positions from the marked end as new [m]. */
  readonly from: number;
  readonly to: number;
  readonly ageYears?: number;
  readonly monthsOutside: number;
  /** Months of full sun in an average month [-]. */
  readonly sunMonths: number;
  readonly wet: boolean;
  /** Where it hangs, and since when; absent when it is down. */
  readonly placement?: Placement & { readonly since: PlainDate };
  readonly marks: readonly WearMark[];
  /** Calendar months in the clamp that holds it now, by anchor side [-]. */
  readonly clampedMonths: { readonly A?: number; readonly B?: number };
}

export interface Climate {
  readonly latitude: LatitudeClass;
  readonly hemisphere: Hemisphere;
}

/** State after everything dated on or before `on`. The record must have passed its checks. */
export function webbingState(record: WebbingRecord, on: PlainDate, climate: Climate): WebbingState {
  const walk = new Walk(record, climate);
  for (const entry of record.entries) {
    if (isBefore(on, entry.date)) break;
    walk.take(entry);
  }
  return walk.finish(on);
}

interface OpenClamp {
  readonly at: number;
  readonly since: PlainDate;
}

/** Walks through the entries in order of date. */
class Walk {
  private kept: readonly [number, number];
  private placement: (Placement & { readonly since: PlainDate }) | undefined;
  private cursor: PlainDate | undefined;
  private monthsOutside = 0;
  private sunMonths = 0;
  private wet = false;
  private readonly marks: WearMark[] = [];
  private readonly clamps = new Map<"A" | "B", OpenClamp>();
  private readonly record: WebbingRecord;
  private readonly climate: Climate;

  constructor(record: WebbingRecord, climate: Climate) {
    this.record = record;
    this.climate = climate;
    this.kept = [0, record.length];
  }

  take(entry: WebbingEntry): void {
    this.weather(entry.date);
    const since = entry.date;
    switch (entry.event) {
      case "moved":
      case "rigged":
        this.release(entry.date);
        this.hang(entry.placement, entry.date);
        break;
      case "takenDown":
        this.release(entry.date);
        this.placement = undefined;
        break;
      case "retensioned":
        this.pull(entry.end, entry.pulled, entry.date);
        break;
      case "shade":
        if (this.placement) this.placement = { ...this.placement, sun: entry.sun };
        break;
      case "wet":
        this.wet = entry.wet;
        break;
      case "falls":
        this.marks.push({ kind: "fallZone", from: entry.from, to: entry.to, falls: entry.falls, since });
        break;
      case "damage":
        this.marks.push({ kind: entry.kind, from: entry.from, to: entry.to, depth: entry.depth, since });
        break;
      case "sewn":
        this.marks.push({ kind: "stitching", ...around(entry.at, entry.length), since });
        break;
      case "clamped":
        // Its months are counted in `finish`, for its end may lie after the date that is asked about.
        this.marks.push({
          kind: "clampMark",
          ...around(entry.at, entry.length),
          months: 0,
          ...optional(entry),
          since,
        });
        break;
      case "cutToLength":
        this.kept = [entry.from, entry.to];
        break;
    }
  }

  finish(on: PlainDate): WebbingState {
    this.weather(on);
    const { id, name, mark, made } = this.record;
    const [from, to] = this.kept;
    const open = [...this.clamps.values()].map((clamp) => this.markOf(clamp, on));
    const months = (side: "A" | "B") => {
      const clamp = this.clamps.get(side);
      return clamp === undefined ? {} : { [side]: monthsBetween(clamp.since, on) };
    };
    return {
      id,
      name,
      mark,
      from,
      to,
      ...(made === undefined ? {} : { ageYears: monthsBetween(made, on) / 12 }),
      monthsOutside: this.monthsOutside,
      sunMonths: this.sunMonths,
      wet: this.wet,
      ...(this.placement === undefined ? {} : { placement: this.placement }),
      marks: [...this.marks.map((m) => countClamp(m, on)), ...open].filter((m) => m.from < to && m.to > from),
      clampedMonths: { ...months("A"), ...months("B") },
    };
  }

  /** Adds the time since the last entry to what the webbing has been through. */
  private weather(until: PlainDate): void {
    if (this.placement !== undefined && this.cursor !== undefined) {
      this.monthsOutside += monthsBetween(this.cursor, until);
      for (const { month, share } of monthShares(this.cursor, until)) {
        const { latitude, hemisphere } = this.climate;
        this.sunMonths += share * monthDose(month, this.placement.sun, latitude, hemisphere);
      }
    }
    this.cursor = until;
  }

  private hang(placement: Placement, since: PlainDate): void {
    this.placement = { ...placement, since };
    for (const side of placement.clampedAt) this.clamps.set(side, { at: endPosition(placement, side), since });
  }

  private pull(end: "A" | "B", pulled: number, on: PlainDate): void {
    if (this.placement === undefined) return;
    const atFrom = this.placement.markedEnd === end;
    const { from, to } = this.placement;
    this.placement = { ...this.placement, ...(atFrom ? { from: from + pulled } : { to: to - pulled }) };
    const clamp = this.clamps.get(end);
    if (clamp === undefined) return;
    this.marks.push({ ...this.markOf(clamp, on), until: on } as WearMark);
    this.clamps.set(end, { at: endPosition(this.placement, end), since: on });
  }

  private release(on: PlainDate): void {
    for (const clamp of this.clamps.values()) this.marks.push({ ...this.markOf(clamp, on), until: on } as WearMark);
    this.clamps.clear();
  }

  private markOf({ at, since }: OpenClamp, on: PlainDate): WearMark {
    return { kind: "clampMark", ...around(at, WEBLOCK_MARK), months: monthsBetween(since, on), since, weblock: true };
  }
}

/** Position on the webbing at an anchor's end of its loaded span [m from the marked end]. */
export function endPosition(placement: Placement, side: "A" | "B"): number {
  return placement.markedEnd === side ? placement.from : placement.to;
}

function around(at: number, length: number): { readonly from: number; readonly to: number } {
  return { from: at - length / 2, to: at + length / 2 };
}

function optional(entry: { readonly until?: PlainDate; readonly load?: number }) {
  const { until, load } = entry;
  return { ...(until === undefined ? {} : { until }), ...(load === undefined ? {} : { load }) };
}

/** Months of a clamp that was written down with its dates, as far as they lie before `on`. */
function countClamp(mark: WearMark, on: PlainDate): WearMark {
  if (mark.kind !== "clampMark" || mark.weblock === true) return mark;
  const { until, ...rest } = mark;
  // The last day in the clamp counts.
  const end = until === undefined ? undefined : addDays(until, 1);
  if (end === undefined || isBefore(on, end)) return { ...rest, months: monthsBetween(mark.since, on) };
  return { ...mark, months: monthsBetween(mark.since, end) };
}
