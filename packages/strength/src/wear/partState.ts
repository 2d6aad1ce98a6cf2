/** The state of a part other than webbing at a date. */
import type { Condition } from "@secondline/rig";
import { isBefore, monthShares, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";
import { monthDose } from "../derating/sunDose.ts";
import type { PartRecord } from "./record.ts";
import type { Climate } from "./webbingState.ts";

export interface PartState {
  readonly rig: string;
  readonly part: string;
  readonly up: boolean;
  readonly condition: Condition;
  readonly falls: number;
}

/** State after everything dated on or before `on`. */
export function partState(record: PartRecord, on: PlainDate, climate: Climate): PartState {
  let made = record.made;
  let cursor: PlainDate | undefined;
  let sun: number | undefined;
  let [months, dose, falls, wet] = [0, 0, 0, false];
  const weather = (until: PlainDate) => {
    if (sun !== undefined && cursor !== undefined) {
      months += monthsBetween(cursor, until);
      for (const { month, share } of monthShares(cursor, until)) {
        dose += share * monthDose(month, sun, climate.latitude, climate.hemisphere);
      }
    }
    cursor = until;
  };
  for (const entry of record.entries) {
    if (isBefore(on, entry.date)) break;
    weather(entry.date);
    if (entry.event === "putUp") sun = entry.sun;
    else if (entry.event === "takenDown") sun = undefined;
    else if (entry.event === "shade") sun = entry.sun;
    else if (entry.event === "wet") wet = entry.wet;
    else if (entry.event === "falls") falls += entry.falls;
    else {
      [months, dose, falls] = [0, 0, 0];
      made = entry.date;
    }
  }
  weather(on);
  const age = made === undefined ? {} : { ageYears: monthsBetween(made, on) / 12 };
  const condition = { monthsOutside: months, sunMonths: dose, ...(wet ? { wet } : {}), ...age };
  return { rig: record.rig, part: record.part, up: sun !== undefined, condition, falls };
}
