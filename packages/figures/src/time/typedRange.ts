import { quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { TimeRange } from "./plotGrid.ts";
import { SHORTEST_RANGE } from "./visibleRange.ts";

export type RangeEnd = "from" | "to";
export type TypedRange =
  | { readonly ok: true; readonly range: TimeRange }
  | { readonly ok: false; readonly message: string };

/** `range` with one end as typed, in seconds, with or without the unit; or the fault of the text. */
export function typedRange(range: TimeRange, end: RangeEnd, text: string, duration: number): TypedRange {
  const time = secondsIn(text);
  if (time === null) return { ok: false, message: sayTime("typedRange.noTime", { text }) };
  if (time < 0 || time > duration)
    return { ok: false, message: sayTime("typedRange.outside", { seconds: quantity.seconds(duration) }) };
  const typed = { ...range, [end]: time };
  if (typed.to - typed.from < SHORTEST_RANGE) return { ok: false, message: sayTime("typedRange.reversed") };
  return { ok: true, range: typed };
}

function secondsIn(text: string): number | null {
  const figures = /^\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*s?\s*$/.exec(text)?.[1];
  return figures === undefined ? null : Number(figures.replace(",", "."));
}
