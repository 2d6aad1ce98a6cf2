/** The part comes down. */
import { entrySchema } from "../entries/entryKind.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const takenDown = partEntryKind({
  event: "takenDown",
  where: "up",
  schema: entrySchema("takenDown", {}),
  read: (written) => written,
  apply: (_entry, walk) => walk.takeDown(),
});
