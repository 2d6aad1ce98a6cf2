/** A fall that nobody planned for. No factor is known for it until somebody has looked at the part. */
import { entrySchema } from "../entries/entryKind.ts";
import { present, text } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const hardFall = partEntryKind({
  event: "hardFall",
  where: "anywhere",
  schema: entrySchema("hardFall", { note: text.optional() }),
  read: (written) => present(written),
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "hardFall" }),
});
