/** A ring ran hot along a stretch. No factor is known for it until somebody has looked for glazed fibre. */
import { stretchFaults } from "../faults.ts";
import { position, present, text } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const hotRing = entryKind({
  event: "hotRing",
  where: "hanging",
  schema: entrySchema("hotRing", { from: position, to: position, note: text.optional() }),
  read: (written) => present(written),
  faults: (entry, { kept, path }) => stretchFaults(entry, kept, path, true),
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "hotRing" }),
});
