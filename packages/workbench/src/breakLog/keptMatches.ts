/** Matchings of columns that this device remembers, by the first line of the file that they were made for. */

import * as z from "zod";
import { type Shelf, setAside } from "../keeping/shelf.ts";
import type { LogTable } from "./logTable.ts";
import { type ColumnMatch, columnMatchSchema } from "./match.ts";

const KEY = "secondline.columns";
/** The newest; whoever has more kinds of files says it again [-]. */
const MOST_KEPT_MATCHES = 12;

const keptSchema = z.array(z.strictObject({ names: z.array(z.string()), match: columnMatchSchema }));
type Kept = z.infer<typeof keptSchema>;

function readKept(shelf: Shelf): Kept {
  const text = shelf.getItem(KEY);
  if (text === null) return [];
  try {
    return keptSchema.parse(JSON.parse(text));
  } catch {
    setAside(shelf, KEY, text);
    return [];
  }
}

const isSame = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && a.every((one, i) => one === b[i]);

export const rememberedMatch = (shelf: Shelf, { columns }: LogTable): ColumnMatch | undefined =>
  readKept(shelf).find(({ names }) => isSame(names, columns))?.match;

/** Throws where the device has no room. */
export function rememberMatch(shelf: Shelf, { columns }: LogTable, match: ColumnMatch): void {
  const others = readKept(shelf).filter(({ names }) => !isSame(names, columns));
  shelf.setItem(KEY, JSON.stringify([{ names: [...columns], match }, ...others].slice(0, MOST_KEPT_MATCHES)));
}
