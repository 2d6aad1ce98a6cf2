/**
 * Characters that show nothing or change how other text is shown: controls, marks of writing direction, separators of
 * lines, spaces without width, halves of characters. A name that holds them could forge what a terminal or a report says.
 */
import { fact, type RigFact } from "./rigFacts.ts";

const HIDDEN_CHARACTER = /[\p{Cc}\p{Cs}\u061c\u200b\u200e\u200f\u2028-\u202e\u2060\u2066-\u2069\ufeff]/u;
const ALL_HIDDEN = new RegExp(HIDDEN_CHARACTER.source, "gu");
/** What notes may hold besides: their lines and tabs. */
const LINES_AND_TABS = /\r\n|[\n\t]/g;

/** The text with every hidden character written as `\u202e`, which JSON reads back as what it was. */
export function visibleText(text: string): string {
  return text.replace(ALL_HIDDEN, code("\\u"));
}

const code = (prefix: string) => (character: string) =>
  `${prefix}${character.codePointAt(0)!.toString(16).padStart(4, "0")}`;

/** The first hidden character of a text; undefined when there is none. `layout`: lines and tabs are allowed. */
export function hiddenCharacter(text: string, layout = false): RigFact | undefined {
  const found = HIDDEN_CHARACTER.exec(layout ? text.replace(LINES_AND_TABS, " ") : text)?.[0];
  return found === undefined ? undefined : fact(kindOf(found), { code: code("U+")(found).toUpperCase() });
}

function kindOf(character: string) {
  if (/[\n\r\u2028\u2029]/.test(character)) return "hidden.break";
  if (character === "\t") return "hidden.tab";
  if (/\p{Cs}/u.test(character)) return "hidden.half";
  if (/[\u200b\u2060\ufeff]/.test(character)) return "hidden.width";
  return /\p{Cc}/u.test(character) ? "hidden.control" : "hidden.direction";
}
