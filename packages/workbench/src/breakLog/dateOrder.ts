/** The order in which a table writes its dates. */
import { dayOf } from "../wear/days.ts";

export const DATE_ORDERS = ["ymd", "dmy", "mdy"] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

/** A date in the order that was chosen, as YYYY-MM-DD; anything else as it is, so that it is told. */
export function isoDate(text: string, order: DateOrder): string {
  const parts = /^(\d{1,4})[./-](\d{1,2})[./-](\d{1,4})$/.exec(text)?.slice(1);
  if (!parts || order === "ymd") return text;
  const [day, month] = order === "dmy" ? [parts[0]!, parts[1]!] : [parts[1]!, parts[0]!];
  const year = parts[2]!;
  return year.length === 4 ? `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}` : text;
}

/** The one order in which all of these are days; undefined where several are, such as 5.6.2026, or none is. */
export function onlyDateOrder(cells: readonly string[]): DateOrder | undefined {
  const written = cells.filter((text) => text !== "");
  const fit = DATE_ORDERS.filter((order) => written.every((text) => dayOf(isoDate(text, order)) !== undefined));
  return written.length > 0 && fit.length === 1 ? fit[0] : undefined;
}
