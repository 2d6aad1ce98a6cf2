/** Walks through a part's entries in order of date and keeps the state that they lead to. */
import { monthShares, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";
import { type Climate, DoseSum } from "../derating/sunDose.ts";
import { afterInspection, type Happened, type NeedsAndDoubts } from "./openNeed.ts";
import type { PartState } from "./partState.ts";
import { type Beginning, reachOf } from "./reach.ts";

interface PartName extends Beginning {
  readonly rig: string;
  readonly part: string;
}

export class PartWalk {
  private beginning: Beginning;
  /** Day of the first entry. */
  private begun: PlainDate | undefined;
  private placed = false;
  /** Day on which a new part took its place. */
  private replacedOn: PlainDate | undefined;
  private areFallsWritten = false;
  private cursor: PlainDate | undefined;
  /** Share of the light while it is up; undefined while it is down [-]. */
  private sun: number | undefined;
  private months = 0;
  private dose: DoseSum;
  private falls = 0;
  private wet: boolean | undefined;
  private judged: NeedsAndDoubts = { needs: [], doubts: [] };
  private readonly part: PartName;
  private readonly climate: Climate;

  constructor(part: PartName, climate: Climate) {
    this.part = part;
    this.climate = climate;
    this.dose = new DoseSum(climate);
    this.beginning = part;
  }

  /** Adds the time since the last entry to the part's months. */
  weather(until: PlainDate): void {
    this.begun ??= until;
    if (this.sun !== undefined && this.cursor !== undefined) {
      this.months += monthsBetween(this.cursor, until);
      for (const { month, share } of monthShares(this.cursor, until)) {
        this.dose.add(month, share, this.sun);
      }
    }
    this.cursor = until;
  }

  putUp(sun: number): void {
    this.sun = sun;
    this.placed = true;
  }

  takeDown(): void {
    this.sun = undefined;
  }

  wetten(wet: boolean): void {
    this.wet = wet;
  }

  fall(falls: number): void {
    this.falls += falls;
    this.areFallsWritten = true;
  }

  /** A new part takes the old one's place: whether it is up, and whether it gets wet, stays as it was. */
  replace(on: PlainDate, made: PlainDate | undefined): void {
    [this.months, this.dose, this.falls] = [0, new DoseSum(this.climate), 0];
    this.judged = { needs: [], doubts: [] };
    this.beginning = made === undefined ? {} : { made };
    this.replacedOn = on;
  }

  needInspection({ date, what, until, note }: Omit<Happened, "since"> & { readonly date: PlainDate }): void {
    const open: Happened = {
      since: date,
      what,
      ...(until === undefined ? {} : { until }),
      ...(note === undefined ? {} : { note }),
    };
    this.judged = { ...this.judged, needs: [...this.judged.needs, open] };
  }

  inspect(inspection: Parameters<typeof afterInspection>[1]): void {
    this.judged = afterInspection(this.judged, inspection);
  }

  finish(on: PlainDate): PartState {
    const { replacedOn, placed, areFallsWritten } = this;
    const begun = replacedOn ?? this.begun;
    this.weather(on);
    const { rig, part } = this.part;
    const { made } = this.beginning;
    const before = reachOf(this.beginning, begun, on);
    const reach = replacedOn === undefined ? before : { ...before, fromNew: true };
    const recorded = { monthsOutside: this.months, sunMonths: this.dose.total, falls: this.falls };
    const { monthsOutside, sunMonths } = recorded;
    const condition = {
      ...(reach.fromNew && placed ? { monthsOutside, sunMonths } : {}),
      ...(this.wet === undefined ? {} : { wet: this.wet }),
      ...(made === undefined ? {} : { ageYears: monthsBetween(made, on) / 12 }),
    };
    const falls = reach.fromNew && areFallsWritten ? { falls: this.falls } : {};
    return {
      rig,
      part,
      up: this.sun !== undefined,
      placed,
      ...(replacedOn === undefined ? {} : { replacedOn: `${replacedOn}` }),
      condition,
      ...falls,
      recorded,
      reach,
      ...this.judged,
    };
  }
}
