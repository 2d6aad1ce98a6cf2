/** Days and moments in the language's form. No other file uses a locale for dates. */
import { DATE_LOCALE } from "./localeEnglish.ts";

const SHORT_DAY_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, {
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});
const MONTH_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, { month: "short", timeZone: "UTC" });
const LONG_DAY_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, { dateStyle: "long" });
const DAY_AND_TIME_FORMAT = new Intl.DateTimeFormat(DATE_LOCALE, { dateStyle: "medium", timeStyle: "short" });

/** A calendar day: "4 Jul 2026". `time`: its beginning in Greenwich [ms since 1970]. */
export const shortDay = (time: number): string => SHORT_DAY_FORMAT.format(time);

/** A sentence with the days in it written otherwise; what is no day stays. `written`: a day by its beginning in Greenwich [ms since 1970]. */
export const withDays = (sentence: string, written: (time: number) => string): string =>
  sentence.replace(/\b\d{4}-\d{2}-\d{2}\b/g, (iso) => {
    const time = Date.parse(`${iso}T00:00:00Z`);
    return !Number.isNaN(time) && new Date(time).toISOString().startsWith(iso) ? written(time) : iso;
  });

/** A sentence with the days in it as the language writes them: "by 2026-07-04" reads "by 4 Jul 2026". */
export const dated = (sentence: string): string => withDays(sentence, shortDay);

/** The month of a calendar day: "Jul". [ms since 1970] */
export const monthName = (time: number): string => MONTH_FORMAT.format(time);

/** The day in the reader's time zone: "4 July 2026". */
export const longDay = (date: Date): string => LONG_DAY_FORMAT.format(date);

/** Day and time in the reader's time zone: "4 Jul 2026, 14:30". */
export const dayAndTime = (date: Date): string => DAY_AND_TIME_FORMAT.format(date);
