/** Falls that the part has held. */
import { entrySchema } from "../entries/entryKind.ts";
import { count } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const falls = partEntryKind({
  event: "falls",
  where: "anywhere",
  schema: entrySchema("falls", { falls: count }),
  read: (written) => written,
  apply: (entry, walk) => walk.fall(entry.falls),
});
