/** Lists as the language joins them: with its commas, its "and", its "or". */
import { LISTS, SEMICOLON } from "./localeEnglish.ts";

const WAYS = {
  comma: { type: "unit", style: "short" },
  and: { type: "conjunction", style: "long" },
  or: { type: "disjunction", style: "long" },
} as const satisfies Record<string, Intl.ListFormatOptions>;

/** "a, b, c"; with a word before the last one where one is asked for; "a; b" where what is listed has commas. */
export function listed(items: readonly string[], joined: keyof typeof WAYS | "semicolon" = "comma"): string {
  if (joined === "semicolon") return items.join(SEMICOLON);
  return new Intl.ListFormat(LISTS, WAYS[joined]).format(items);
}
