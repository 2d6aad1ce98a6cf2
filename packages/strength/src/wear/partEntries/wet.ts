/** The part is wet from this day on, or dry. */
import * as z from "zod";
import { entrySchema } from "../entries/entryKind.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const wet = partEntryKind({
  event: "wet",
  where: "anywhere",
  schema: entrySchema("wet", { wet: z.boolean() }),
  read: (written) => written,
  apply: (entry, walk) => walk.wetten(entry.wet),
});
