/** A language: every sentence by its key, in one file. Values stand in braces; `{count|one|more}` chooses by number. */
import { ENGLISH } from "./english.ts";
import type { ENGLISH_LATER } from "./englishLater.ts";
import { LANGUAGE_CODE } from "./localeEnglish.ts";
import { local } from "./quantity.ts";

export type Key = keyof typeof ENGLISH;
/** Keys of sentences that are not part of the first load. */
export type LaterKey = keyof typeof ENGLISH_LATER;
export type Catalogue = Readonly<Record<Key, string>>;

export interface Language {
  /** BCP 47, such as "en". */
  readonly code: string;
  readonly sentences: Catalogue;
  /** Sentences of teardowns and break logs; a missing one is said in English. */
  readonly later?: Partial<Readonly<Record<LaterKey, string>>>;
  /** Sentences of phrases that come with kinds of events; a missing one is said in English. */
  readonly phrases?: Readonly<Record<string, string>>;
}

export const english: Language = { code: LANGUAGE_CODE, sentences: ENGLISH };

export type Values = Readonly<Record<string, string | number>>;
export type Say = (key: Key, values?: Values) => string;

/** A value, or a choice by number, in which values may stand again. */
const PLACEHOLDER = /\{(\w+)(?:\|((?:[^{}|]|\{\w+\})*)\|((?:[^{}|]|\{\w+\})*))?\}/g;

/** Puts values into a sentence; throws for a missing value, because a hole in a sentence is a programmer's error. */
export function filled(sentence: string, values: Values): string {
  return sentence.replace(PLACEHOLDER, (_, name: string, one?: string, more?: string) => {
    const value = values[name];
    if (value === undefined) throw new Error(`The sentence "${sentence}" wants "${name}".`);
    if (one === undefined || more === undefined) return typeof value === "number" ? local(String(value)) : value;
    return filled(String(value) === "1" ? one : more, values);
  });
}

export const sayIn =
  ({ sentences }: Language): Say =>
  (key, values = {}) =>
    filled(sentences[key], values);
