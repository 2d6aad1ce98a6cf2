/** Days and moments in the language's form. No other file uses a locale for dates, and every day that a reader sees is made here. */
import { DATE_LOCALE } from "./localeEnglish.ts";

export const DAY_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, {
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});
const MONTH_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, { month: "short", timeZone: "UTC" });
const LONG_DAY_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, { dateStyle: "long" });
const DAY_AND_TIME_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, { dateStyle: "medium", timeStyle: "short" });

/** A calendar day: "4 Jul 2026". `iso`: YYYY-MM-DD; what is no day stays as it is. */
export function dayText(iso: string): string {
  const time = Date.parse(`${iso}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === iso ? DAY_FORMAT.format(time) : iso;
}

/** The month of a calendar day: "Jul". [ms since 1970] */
export const monthName = (time: number): string => MONTH_FORMAT.format(time);

/** The day in the reader's time zone: "4 July 2026". */
export const longDay = (date: Date): string => LONG_DAY_FORMAT.format(date);

/** Day and time in the reader's time zone: "4 Jul 2026, 14:30". */
export const dayAndTime = (date: Date): string => DAY_AND_TIME_FORMAT.format(date);
