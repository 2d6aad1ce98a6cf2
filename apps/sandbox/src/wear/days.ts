/** Calendar dates as whole days since 1970, so that they can lie on an axis. Always UTC: a date has no hour. */
import { monthName, shortDay } from "@secondline/words/dates";

const DAY = 86_400_000;

/** Day number of YYYY-MM-DD; undefined for anything else, 30 February included. */
export function dayOf(text: unknown): number | undefined {
  if (typeof text !== "string" || !/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const time = Date.parse(`${text}T00:00:00Z`);
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text) return undefined;
  return time / DAY;
}

export function isoOf(day: number): string {
  return new Date(Math.round(day) * DAY).toISOString().slice(0, 10);
}

/** Today where the reader is, not in Greenwich. */
export function todayIso(): string {
  const now = new Date();
  return isoOf(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / DAY);
}

/** "4 Jul 2026". */
export const dateWords = (iso: string): string => {
  const day = dayOf(iso);
  return day === undefined ? iso : shortDay(day * DAY);
};

/** A sentence with the dates in it written as everywhere in this view. */
export const dated = (sentence: string): string => sentence.replace(/\b\d{4}-\d{2}-\d{2}\b/g, dateWords);

export interface Tick {
  readonly day: number;
  readonly label: string;
  readonly year: boolean;
}

/** Marks at month borders: every one, every third, or years only, as the room allows. */
export function calendarTicks(from: number, to: number, most: number): Tick[] {
  const step = [1, 3, 6, 12].find((months) => (to - from) / (30.4 * months) <= most) ?? 12;
  const start = new Date(from * DAY);
  const ticks: Tick[] = [];
  for (let month = 0; ; month += 1) {
    const date = new Date(Date.UTC(start.getUTCFullYear(), month, 1));
    const day = date.getTime() / DAY;
    if (day > to) return ticks;
    const year = date.getUTCMonth() === 0;
    if (day < from || (!year && date.getUTCMonth() % step !== 0)) continue;
    ticks.push({ day, year, label: year ? String(date.getUTCFullYear()) : monthName(day * DAY) });
  }
}
