/** The kinds of entries of a part's record. A new kind is a file of its own and a line here. */
import * as z from "zod";
import { edgeContact } from "./edgeContact.ts";
import { falls } from "./falls.ts";
import { hardFall } from "./hardFall.ts";
import { inspected } from "./inspected.ts";
import type { PartEntryKind } from "./partEntryKind.ts";
import { putUp } from "./putUp.ts";
import { ranHot } from "./ranHot.ts";
import { replaced } from "./replaced.ts";
import { shade } from "./shade.ts";
import { storm } from "./storm.ts";
import { takenDown } from "./takenDown.ts";
import { wet } from "./wet.ts";

export const PART_ENTRY_KINDS = {
  putUp,
  takenDown,
  shade,
  wet,
  falls,
  replaced,
  storm,
  edgeContact,
  ranHot,
  hardFall,
  inspected,
} as const;

type Kind = (typeof PART_ENTRY_KINDS)[keyof typeof PART_ENTRY_KINDS];
type Schema = Kind["schema"];

/** One dated entry of a part. */
export type PartEntry = ReturnType<Kind["read"]>;

export const PART_EVENTS = Object.keys(PART_ENTRY_KINDS) as readonly PartEntry["event"][];

export const partEntrySchema = z.discriminatedUnion(
  "event",
  Object.values(PART_ENTRY_KINDS).map(({ schema }) => schema) as unknown as readonly [Schema, ...Schema[]],
);

/** The table knows each kind by its event; the compiler does not see that the two belong together. */
export function partEntryKindOf(event: PartEntry["event"]): PartEntryKind<z.ZodType, PartEntry> {
  return PART_ENTRY_KINDS[event] as unknown as PartEntryKind<z.ZodType, PartEntry>;
}
