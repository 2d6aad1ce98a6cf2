/** The state of everything in a wear record at a date, and the places that must be looked at. */
import type { PlainDate } from "../dates/calendarDate.ts";
import { date } from "../dates/calendarDate.ts";
import { type WearFlag, wearFlags } from "./flags.ts";
import { type PartState, partState } from "./partState.ts";
import type { WearRecord } from "./record.ts";
import { type WebbingState, webbingState } from "./webbingState.ts";

export interface WearState {
  /** Calendar date, YYYY-MM-DD. */
  readonly on: string;
  readonly webbings: readonly WebbingState[];
  readonly parts: readonly PartState[];
  readonly flags: readonly WearFlag[];
}

/** `on`: calendar date YYYY-MM-DD; throws for anything else. */
export function wearState(record: WearRecord, on: string | PlainDate): WearState {
  const day = typeof on === "string" ? date(on) : on;
  const webbings = record.webbings.map((webbing) => webbingState(webbing, day, record));
  const parts = record.parts.map((part) => partState(part, day, record));
  return { on: day.toString(), webbings, parts, flags: webbings.flatMap(wearFlags) };
}
