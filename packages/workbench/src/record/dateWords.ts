/** Dates as they are drawn. */
import type { CalendarTick } from "@secondline/figures/wear";
import { monthName } from "@secondline/words/dates";

const DAY_MS = 86_400_000;

/** Marks at month borders: every one, every third, or years only, as the room allows. */
export function calendarTicks(from: number, to: number, most: number): CalendarTick[] {
  const step = [1, 3, 6, 12].find((months) => (to - from) / (30.4 * months) <= most) ?? 12;
  const start = new Date(from * DAY_MS);
  const ticks: CalendarTick[] = [];
  for (let month = 0; ; month += 1) {
    const date = new Date(Date.UTC(start.getUTCFullYear(), month, 1));
    const day = date.getTime() / DAY_MS;
    if (day > to) return ticks;
    const year = date.getUTCMonth() === 0;
    if (day < from || (!year && date.getUTCMonth() % step !== 0)) continue;
    ticks.push({ day, year, label: year ? String(date.getUTCFullYear()) : monthName(day * DAY_MS) });
  }
}
