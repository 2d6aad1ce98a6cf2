/** The part touched an edge of rock. No factor is known for it until somebody has looked. */
import { entrySchema } from "../entries/entryKind.ts";
import { present, text } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const edgeContact = partEntryKind({
  event: "edgeContact",
  where: "anywhere",
  schema: entrySchema("edgeContact", { note: text.optional() }),
  read: (written) => present(written),
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "edge" }),
});
