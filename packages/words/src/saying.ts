import { filled, type Values } from "./language.ts";

/** Says the sentences of one catalogue by key, with the values that they need. */
export const saying =
  <Key extends string>(sentences: Readonly<Record<Key, string>>) =>
  (key: Key, values: Values = {}): string =>
    filled(sentences[key], values);
