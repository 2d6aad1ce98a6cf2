import type { TimeRange } from "./plotGrid.ts";

/** The shortest stretch of time that a plot shows [s]. */
export const SHORTEST_RANGE = 0.002;

/** The whole run. */
export function fitRange(duration: number): TimeRange {
  return { from: 0, to: Math.max(duration, SHORTEST_RANGE) };
}

export function isFit(range: TimeRange, duration: number): boolean {
  return range.from <= 0 && range.to >= duration;
}

/** `range` shortened by `factor` (2 halves it, 0.5 doubles it) with `anchor` [s] kept at its place. */
export function zoomed(range: TimeRange, factor: number, anchor: number, duration: number): TimeRange {
  const span = range.to - range.from;
  const wanted = Math.min(Math.max(span / factor, SHORTEST_RANGE), Math.max(duration, SHORTEST_RANGE));
  const place = Math.min(Math.max((anchor - range.from) / span, 0), 1);
  return inside({ from: anchor - place * wanted, to: anchor + (1 - place) * wanted }, duration);
}

/** `range` moved by `shift` [s], as far as the run allows. */
export function panned(range: TimeRange, shift: number, duration: number): TimeRange {
  return inside({ from: range.from + shift, to: range.to + shift }, duration);
}

/** `range`, or the nearest of the same length that shows `time`: a page further while playing, just enough otherwise. */
export function rangeShowing(range: TimeRange, time: number, duration: number, paging: boolean): TimeRange {
  if (time >= range.from && time <= range.to) return range;
  const span = range.to - range.from;
  if (paging) return inside({ from: time - span * 0.05, to: time + span * 0.95 }, duration);
  const from = time < range.from ? time : time - span;
  return inside({ from, to: from + span }, duration);
}

/** Kept within the run, with its length. */
function inside(range: TimeRange, duration: number): TimeRange {
  const end = Math.max(duration, SHORTEST_RANGE);
  const span = Math.min(range.to - range.from, end);
  const from = Math.min(Math.max(range.from, 0), end - span);
  return { from, to: from + span };
}
