/**
 * What every kind of entry of a part's record says of itself; `partEntryKinds.ts` lists them. Like the entries of a
 * webbing, for parts without places.
 */
import type * as z from "zod";
import type { PlainDate } from "../../dates/calendarDate.ts";
import type { RecordIssue } from "../faults.ts";
import type { PartWalk } from "../partWalk.ts";

export interface PartEntryKind<S extends z.ZodType, E extends { readonly event: string; readonly date: PlainDate }> {
  readonly event: E["event"];
  /** Where the part must be. */
  readonly where: "up" | "down" | "anywhere";
  readonly schema: S;
  readonly read: (written: z.output<S>) => E;
  /** Faults beyond the form; none when it is left out. */
  readonly faults?: (entry: E, path: string) => RecordIssue[];
  readonly apply: (entry: E, walk: PartWalk) => void;
}

/** Ties an entry's type to its schema; `E` follows from `read`. */
export function partEntryKind<S extends z.ZodType, E extends { readonly event: string; readonly date: PlainDate }>(
  kind: PartEntryKind<S, E>,
): PartEntryKind<S, E> {
  return kind;
}
