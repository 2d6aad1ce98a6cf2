/** Calendar dates as whole days since 1970, so that they can lie on an axis. Always UTC: a date has no hour. */
const DAY_MS = 86_400_000;

/** Day number of YYYY-MM-DD; undefined for anything else, 30 February included. */
export function dayOf(text: unknown): number | undefined {
  if (typeof text !== "string" || !/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const time = Date.parse(`${text}T00:00:00Z`);
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== text) return undefined;
  return time / DAY_MS;
}

export function isoOf(day: number): string {
  return new Date(Math.round(day) * DAY_MS).toISOString().slice(0, 10);
}

/** Today where the reader is, not in Greenwich. */
export function todayIso(): string {
  const now = new Date();
  return isoOf(Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / DAY_MS);
}
