/** Says sentences of files that are loaded when they are needed, and those that are always there. */
import { ENGLISH_LATER } from "./englishLater.ts";
import { filled, type Key, type Language, type LaterKey, type Values } from "./language.ts";

export type LaterSay = (key: Key | LaterKey, values?: Values) => string;

/** Every sentence is looked up: tables ask for this once a cell, and to put the catalogues together takes longer than the table. */
export function sayLaterIn({ sentences, later = {} }: Language): LaterSay {
  return (key, values = {}) =>
    filled(sentences[key as Key] ?? later[key as LaterKey] ?? ENGLISH_LATER[key as LaterKey], values);
}
