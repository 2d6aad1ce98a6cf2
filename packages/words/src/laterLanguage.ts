/** Says sentences of files that are loaded when they are needed, and those that are always there. */
import { ENGLISH_LATER } from "./englishLater.ts";
import { filled, type Key, type Language, type LaterKey, type Values } from "./language.ts";

export type LaterSay = (key: Key | LaterKey, values?: Values) => string;

export function sayLaterIn({ sentences, later }: Language): LaterSay {
  const all = { ...ENGLISH_LATER, ...later, ...sentences };
  return (key, values = {}) => filled(all[key], values);
}
