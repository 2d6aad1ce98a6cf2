import { filled, type Values } from "./language.ts";

/** A way to say the sentences of one catalogue: by key, with the values that they want. */
export const saying =
  <Key extends string>(sentences: Readonly<Record<Key, string>>) =>
  (key: Key, values: Values = {}): string =>
    filled(sentences[key], values);
