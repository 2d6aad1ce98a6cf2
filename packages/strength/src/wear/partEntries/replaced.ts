/** A new part of the same kind takes its place, made on that date. */
import { entrySchema } from "../entries/entryKind.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const replaced = partEntryKind({
  event: "replaced",
  where: "anywhere",
  schema: entrySchema("replaced", {}),
  read: (written) => written,
  apply: ({ date }, walk) => walk.replace(date),
});
