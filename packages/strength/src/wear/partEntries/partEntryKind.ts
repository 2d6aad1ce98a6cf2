/**
 * The interface of every kind of entry of a part's record; `partEntryKinds.ts` lists the kinds. They are like the entries of a
 * webbing, without places.
 */
import type * as z from "zod";
import type { PlainDate } from "../../dates/calendarDate.ts";
import type { RecordIssue } from "../faults.ts";
import type { PartWalk } from "../partWalk.ts";

export interface PartEntryKind<S extends z.ZodType, E extends { readonly event: string; readonly date: PlainDate }> {
  readonly event: E["event"];
  /** Place that the entry requires of the part. */
  readonly where: "up" | "down" | "anywhere";
  readonly schema: S;
  readonly read: (written: z.output<S>) => E;
  /** Checks beyond the form; absent if there are none. */
  readonly faults?: (entry: E, path: string) => RecordIssue[];
  readonly apply: (entry: E, walk: PartWalk) => void;
}

/** Ties an entry's type to its schema; `E` follows from `read`. */
export function partEntryKind<S extends z.ZodType, E extends { readonly event: string; readonly date: PlainDate }>(
  kind: PartEntryKind<S, E>,
): PartEntryKind<S, E> {
  return kind;
}
