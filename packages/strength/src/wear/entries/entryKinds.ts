/** The kinds of entries of a webbing's record. A new kind is a file of its own and a line here. */
import * as z from "zod";
import { clamped } from "./clamped.ts";
import { cutToLength } from "./cutToLength.ts";
import { damage } from "./damage.ts";
import { edgeContact } from "./edgeContact.ts";
import type { EntryKind } from "./entryKind.ts";
import { falls } from "./falls.ts";
import { hardFall } from "./hardFall.ts";
import { hotRing } from "./hotRing.ts";
import { inspected } from "./inspected.ts";
import { moved } from "./moved.ts";
import { retensioned } from "./retensioned.ts";
import { rigged } from "./rigged.ts";
import { sagReading } from "./sagReading.ts";
import { sewn } from "./sewn.ts";
import { shade } from "./shade.ts";
import { storm } from "./storm.ts";
import { takenDown } from "./takenDown.ts";
import { tensionReading } from "./tensionReading.ts";
import { wet } from "./wet.ts";

export const ENTRY_KINDS = {
  rigged,
  moved,
  takenDown,
  retensioned,
  falls,
  shade,
  wet,
  damage,
  clamped,
  sewn,
  cutToLength,
  storm,
  edgeContact,
  hotRing,
  hardFall,
  tensionReading,
  sagReading,
  inspected,
} as const;

type Kind = (typeof ENTRY_KINDS)[keyof typeof ENTRY_KINDS];
type Schema = Kind["schema"];

/** One dated entry of a webbing. */
export type WebbingEntry = ReturnType<Kind["read"]>;

export const WEBBING_EVENTS = Object.keys(ENTRY_KINDS) as readonly WebbingEntry["event"][];

export const webbingEntrySchema = z.discriminatedUnion(
  "event",
  Object.values(ENTRY_KINDS).map(({ schema }) => schema) as unknown as readonly [Schema, ...Schema[]],
);

/** The table knows each kind by its event; the compiler does not see that the two belong together. */
export function entryKindOf(event: WebbingEntry["event"]): EntryKind<z.ZodType, WebbingEntry> {
  return ENTRY_KINDS[event] as unknown as EntryKind<z.ZodType, WebbingEntry>;
}
