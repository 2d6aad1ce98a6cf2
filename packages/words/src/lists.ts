/** Lists with the language's commas, "and" and "or". */
import { LIST_LOCALE, SEMICOLON } from "./localeEnglish.ts";

const LIST_STYLES = {
  comma: { type: "unit", style: "short" },
  and: { type: "conjunction", style: "long" },
  or: { type: "disjunction", style: "long" },
} as const satisfies Record<string, Intl.ListFormatOptions>;

type Style = keyof typeof LIST_STYLES;
const formats = new Map<Style, Intl.ListFormat>();

/** Made once: to make one takes longer than to use it many times. */
function formatOf(style: Style): Intl.ListFormat {
  const format = formats.get(style) ?? new Intl.ListFormat(LIST_LOCALE, LIST_STYLES[style]);
  formats.set(style, format);
  return format;
}

/** "a, b, c"; with a word before the last item if asked for; "a; b" if the items have commas. */
export function listed(items: readonly string[], joined: Style | "semicolon" = "comma"): string {
  if (joined === "semicolon") return items.join(SEMICOLON);
  return formatOf(joined).format(items);
}
