/** A piece is cut off. Positions on the remaining webbing still count from the first marked end. */
import { stretchFaults } from "../faults.ts";
import { position } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const cutToLength = entryKind({
  event: "cutToLength",
  where: "down",
  schema: entrySchema("cutToLength", { from: position, to: position }),
  read: (written) => written,
  faults: (entry, { kept, path }) => stretchFaults(entry, kept, path),
  apply: ({ from, to }, walk) => walk.keep(from, to),
});
