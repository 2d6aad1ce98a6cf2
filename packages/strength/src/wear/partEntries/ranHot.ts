/** The part, such as a ring or the leash at it, ran hot. No factor is known for it until somebody has looked. */
import { entrySchema } from "../entries/entryKind.ts";
import { present, text } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const ranHot = partEntryKind({
  event: "ranHot",
  where: "anywhere",
  schema: entrySchema("ranHot", { note: text.optional() }),
  read: (written) => present(written),
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "heat" }),
});
