/** Days that stay on one line of large letters. */
import { DAY_FORMAT } from "./dates.ts";

const PART: Readonly<Record<string, string>> = {
  day: "\\d{1,2}",
  month: "\\p{L}+\\.?",
  year: "\\d{4}",
};
/** A day as the language writes it. */
const DAY = new RegExp(
  DAY_FORMAT.formatToParts(0)
    .map(({ type, value }) => PART[type] ?? value.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"))
    .join(""),
  "gu",
);

export const unbrokenDays = (text: string): string => text.replace(DAY, (day) => day.replaceAll(" ", "\u00a0"));
