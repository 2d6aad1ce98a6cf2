/** Walks through a webbing's entries in order of date and keeps the state that they lead to. */
import type { AnchorName } from "@secondline/rig";
import { addDays, isBefore, monthShares, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";
import { constant } from "../derating/constantValues.ts";
import { type Climate, DoseSum } from "../derating/sunDose.ts";
import { afterInspection, type Happened, type NeedsAndDoubts } from "./openNeed.ts";
import { endPosition, type Placement, pulledPlacement } from "./placement.ts";
import { type Beginning, reachOf } from "./reach.ts";
import type { LineReading } from "./readings/lineReading.ts";
import type { WearMark, WebbingState } from "./webbingState.ts";

interface OpenClamp {
  readonly at: number;
  readonly since: PlainDate;
  readonly load?: number;
}

interface WebbingName extends Beginning {
  readonly id: string;
  readonly name: string;
  readonly mark: string;
  readonly length: number;
}

export class WebbingWalk {
  private kept: readonly [number, number];
  private placement: (Placement & { readonly since: PlainDate }) | undefined;
  /** Day of the first entry. */
  private begun: PlainDate | undefined;
  private cursor: PlainDate | undefined;
  private monthsOutside = 0;
  private readonly dose: DoseSum;
  private wet: boolean | undefined;
  private judged: NeedsAndDoubts = { needs: [], doubts: [] };
  private readings: LineReading[] = [];
  private readonly marks: WearMark[] = [];
  private readonly clamps = new Map<AnchorName, OpenClamp>();
  private readonly webbing: WebbingName;

  constructor(webbing: WebbingName, climate: Climate) {
    this.webbing = webbing;
    this.dose = new DoseSum(climate);
    this.kept = [0, webbing.length];
  }

  /** Adds the time since the last entry to the webbing's months. */
  weather(until: PlainDate): void {
    this.begun ??= until;
    if (this.placement !== undefined && this.cursor !== undefined) {
      this.monthsOutside += monthsBetween(this.cursor, until);
      for (const { month, share } of monthShares(this.cursor, until)) {
        this.dose.add(month, share, this.placement.sun);
      }
    }
    this.cursor = until;
  }

  hang(placement: Placement, since: PlainDate): void {
    this.release(since);
    this.readings = [];
    this.placement = { ...placement, since };
    for (const side of placement.clampedAt) this.clamp(side, since);
  }

  takeDown(on: PlainDate): void {
    this.release(on);
    this.readings = [];
    this.placement = undefined;
  }

  pull(end: AnchorName, pulled: number, on: PlainDate): void {
    if (this.placement === undefined) return;
    this.placement = pulledPlacement(this.placement, end, pulled);
    this.readings = [];
    const clamp = this.clamps.get(end);
    if (clamp === undefined) return;
    this.marks.push({ ...weblockMark(clamp, on), until: on } as WearMark);
    this.clamp(end, on);
  }

  shade(sun: number): void {
    if (this.placement === undefined) return;
    const { sunAssumed: _assumed, ...placement } = this.placement;
    this.placement = { ...placement, sun };
  }

  wetten(wet: boolean): void {
    this.wet = wet;
  }

  mark(mark: WearMark): void {
    this.marks.push(mark);
  }

  keep(from: number, to: number): void {
    this.kept = [from, to];
  }

  /** Readings count until the tension is changed. */
  reading(reading: LineReading): void {
    this.readings.push(reading);
  }

  needInspection({ date, what, ...need }: Omit<Happened, "since"> & { readonly date: PlainDate }): void {
    const { until, note, from, to } = need;
    const open: Happened = {
      since: date,
      what,
      ...(until === undefined ? {} : { until }),
      ...(note === undefined ? {} : { note }),
      ...(from === undefined ? {} : { from }),
      ...(to === undefined ? {} : { to }),
    };
    this.judged = { ...this.judged, needs: [...this.judged.needs, open] };
  }

  inspect(inspection: Parameters<typeof afterInspection>[1]): void {
    this.judged = afterInspection(this.judged, inspection);
  }

  finish(on: PlainDate): WebbingState {
    const reach = reachOf(this.webbing, this.begun, on);
    this.weather(on);
    const { id, name, mark, made } = this.webbing;
    const [from, to] = this.kept;
    const open = [...this.clamps.values()].map((clamp) => weblockMark(clamp, on));
    const months = (side: AnchorName) => {
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
      sunMonths: this.dose.total,
      ...(this.wet === undefined ? {} : { wet: this.wet }),
      ...(this.placement === undefined ? {} : { placement: this.placement }),
      marks: [...this.marks.map((m) => countClamp(m, on)), ...open].filter((m) => isWithin(m, from, to)),
      clampedMonths: { ...months("A"), ...months("B") },
      needs: this.judged.needs.filter((need) => (need.from ?? from) <= to && (need.to ?? to) >= from),
      doubts: this.judged.doubts,
      readings: this.readings,
      reach,
    };
  }

  private clamp(side: AnchorName, since: PlainDate): void {
    const { tension } = this.placement!;
    const at = endPosition(this.placement!, side);
    this.clamps.set(side, { at, since, ...(tension === undefined ? {} : { load: tension }) });
  }

  private release(on: PlainDate): void {
    for (const clamp of this.clamps.values()) this.marks.push({ ...weblockMark(clamp, on), until: on } as WearMark);
    this.clamps.clear();
  }
}

/** A cut has no length, so one at the very end of the remaining webbing counts. */
function isWithin(mark: WearMark, from: number, to: number): boolean {
  return mark.kind === "cut" ? mark.from <= to && mark.to >= from : mark.from < to && mark.to > from;
}

function weblockMark({ at, since, load }: OpenClamp, on: PlainDate): WearMark {
  return {
    kind: "clampMark",
    ...around(at, constant("place.weblockMark")),
    months: monthsBetween(since, on),
    ...(load === undefined ? {} : { load }),
    since,
    weblock: true,
  };
}

export function around(at: number, length: number): { readonly from: number; readonly to: number } {
  return { from: at - length / 2, to: at + length / 2 };
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
