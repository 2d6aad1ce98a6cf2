import { quantity } from "@secondline/words";
import { type LessonsKey, sayLessons } from "@secondline/words/page/lessons";

export type WordKey = LessonsKey;
type Values = Readonly<Record<string, string | number>>;

/** A text for paragraphs: a number and its unit stay on one line. */
export function prose(key: WordKey, values: Values = {}): string {
  return quantity.unbroken(say(key, values));
}

/** A text with its places filled in; one that is not given stays visible, because a gap would read as a fact. */
export function say(key: WordKey, values: Values = {}): string {
  return sayLessons(key, new Proxy(values, { get: (given, name: string) => given[name] ?? `{${name}}` }));
}
