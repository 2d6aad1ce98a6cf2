/** Lists with the language's commas, "and" and "or". */
import { LIST_LOCALE, SEMICOLON } from "./localeEnglish.ts";

const LIST_STYLES = {
  comma: { type: "unit", style: "short" },
  and: { type: "conjunction", style: "long" },
  or: { type: "disjunction", style: "long" },
} as const satisfies Record<string, Intl.ListFormatOptions>;

/** "a, b, c"; with a word before the last item if asked for; "a; b" if the items have commas. */
export function listed(items: readonly string[], joined: keyof typeof LIST_STYLES | "semicolon" = "comma"): string {
  if (joined === "semicolon") return items.join(SEMICOLON);
  return new Intl.ListFormat(LIST_LOCALE, LIST_STYLES[joined]).format(items);
}
