/**
 * The interface of every kind of entry of a webbing's record: its form, its rules, and its effect on the webbing's state. One
 * file per kind, listed in `entryKinds.ts`.
 */
import * as z from "zod";
import type { PlainDate } from "../../dates/calendarDate.ts";
import type { RecordIssue, RemainingWebbing } from "../faults.ts";
import type { Placement } from "../placement.ts";
import { date } from "../values.ts";
import type { WebbingWalk } from "../webbingWalk.ts";

/** Place of the webbing when the entry is made. */
export type Whereabouts = "hanging" | "down" | "anywhere";

export interface CheckedEntry {
  readonly path: string;
  readonly kept: RemainingWebbing;
  /** Placement before the entry; absent when the webbing is down. */
  readonly placement?: Placement;
}

export interface EntryKind<S extends z.ZodType, E extends { readonly event: string; readonly date: PlainDate }> {
  readonly event: E["event"];
  /** Place that the entry requires of the webbing. */
  readonly where: Whereabouts;
  readonly schema: S;
  readonly read: (written: z.output<S>) => E;
  /** Checks beyond the form; absent if there are none. */
  readonly faults?: (entry: E, checked: CheckedEntry) => RecordIssue[];
  readonly apply: (entry: E, walk: WebbingWalk) => void;
}

/** The schema of an entry: its date, its event, and its other fields. */
export function entrySchema<const E extends string, S extends z.ZodRawShape>(event: E, shape: S) {
  return z.strictObject({ date, event: z.literal(event), ...shape });
}

/** Ties an entry's type to its schema; `E` follows from `read`. */
export function entryKind<S extends z.ZodType, E extends { readonly event: string; readonly date: PlainDate }>(
  kind: EntryKind<S, E>,
): EntryKind<S, E> {
  return kind;
}
