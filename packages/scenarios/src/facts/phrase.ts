/**
 * Something to say, without saying it: a key, what goes into it, and its English as a fallback. The words package makes the
 * sentence, in whatever language has the key.
 */
import type { PartId } from "@secondline/rig";

export type PhraseValue =
  | { readonly count: number }
  /** A place on the line as a fraction of its natural length, 0 at A [-], of a span [m]. */
  | { readonly place: number; readonly span: number }
  | { readonly part: PartId }
  | { readonly seconds: number }
  | { readonly name: string }
  | { readonly phrase: Phrase };

export interface Phrase {
  /** Unique, dotted: "event.leashFall". */
  readonly key: string;
  /** With the values in braces: "Leash fall {where}". */
  readonly english: string;
  readonly values: Readonly<Record<string, PhraseValue>>;
}

export const phrase = (key: string, english: string, values: Phrase["values"] = {}): Phrase => ({
  key,
  english,
  values,
});
