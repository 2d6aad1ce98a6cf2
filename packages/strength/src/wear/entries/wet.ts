/** The webbing is wet from this day on, or dry. */
import * as z from "zod";
import { entryKind, entrySchema } from "./entryKind.ts";

export const wet = entryKind({
  event: "wet",
  where: "anywhere",
  schema: entrySchema("wet", { wet: z.boolean() }),
  read: (written) => written,
  apply: (entry, walk) => walk.wetten(entry.wet),
});
