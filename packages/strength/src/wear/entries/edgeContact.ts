/** The webbing touched an edge of rock. No factor is known for it until somebody has looked at the place. */
import { stretchFaults } from "../faults.ts";
import { position, present, text } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const edgeContact = entryKind({
  event: "edgeContact",
  where: "anywhere",
  schema: entrySchema("edgeContact", { from: position, to: position, note: text.optional() }),
  read: (written) => present(written),
  faults: (entry, { kept, path }) => stretchFaults(entry, kept, path, true),
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "edge" }),
});
