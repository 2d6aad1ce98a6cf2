/** Calendar dates, through the Temporal polyfill: no calendar of our own. */
import { Temporal } from "temporal-polyfill";

export type PlainDate = Temporal.PlainDate;

/** Days in a mean month of the Gregorian calendar [days]. */
const DAYS_PER_MONTH = 30.436875;

const READ_DATES = new Map<string, PlainDate | undefined>();
/** Some more days than in ten years: records and logs name few different days, again and again. */
const MOST_KEPT_DATES = 4000;

const DATE_PATTERN = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Whether `readDate` reads the text, at a hundredth of its time. A day that its month lacks comes back from `Date` as another
 * one.
 */
export function isDate(text: string): boolean {
  if (!DATE_PATTERN.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

/** Reads YYYY-MM-DD strictly; undefined for anything else, 30 February included. */
export function readDate(text: string): PlainDate | undefined {
  if (!DATE_PATTERN.test(text)) return undefined;
  if (READ_DATES.has(text)) return READ_DATES.get(text);
  if (READ_DATES.size >= MOST_KEPT_DATES) READ_DATES.clear();
  const read = dateOf(text);
  READ_DATES.set(text, read);
  return read;
}

function dateOf(text: string): PlainDate | undefined {
  try {
    return Temporal.PlainDate.from(text, { overflow: "reject" });
  } catch {
    return undefined;
  }
}

/** Reads a date that was checked before; throws on any other text. */
export function date(text: string): PlainDate {
  const read = readDate(text);
  if (read === undefined) throw new Error(`expected a date YYYY-MM-DD, got "${text}"`);
  return read;
}

/** Months from one date to another, days as fractions of a mean month [-]. */
export function monthsBetween(from: PlainDate, to: PlainDate): number {
  return from.until(to, { largestUnit: "days" }).days / DAYS_PER_MONTH;
}

export function isBefore(a: PlainDate, b: PlainDate): boolean {
  return Temporal.PlainDate.compare(a, b) < 0;
}

export function addDays(from: PlainDate, days: number): PlainDate {
  return from.add({ days });
}

/** Splits a period [from, to) at month borders: year, month (1 to 12) and the share of that month covered [-]. */
export function monthShares(from: PlainDate, to: PlainDate): { readonly month: number; readonly share: number }[] {
  const shares: { month: number; share: number }[] = [];
  let start = from;
  while (isBefore(start, to)) {
    const next = start.with({ day: 1 }).add({ months: 1 });
    const end = isBefore(next, to) ? next : to;
    const days = start.until(end, { largestUnit: "days" }).days;
    shares.push({ month: start.month, share: days / start.daysInMonth });
    start = end;
  }
  return shares;
}
