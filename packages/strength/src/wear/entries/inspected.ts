/**
 * Somebody looked at the webbing, or at a stretch of it, and judged it. The entry closes earlier reasons for an inspection
 * there.
 */
import { stretchFaults } from "../faults.ts";
import { judgementFaults, judgementShape } from "../judgement.ts";
import { position, present } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const inspected = entryKind({
  event: "inspected",
  where: "anywhere",
  /** Without a place the whole webbing was looked at. */
  schema: entrySchema("inspected", { ...judgementShape, from: position.optional(), to: position.optional() }),
  read: (written) => present(written),
  faults(entry, { kept, path }) {
    const { from = kept[0], to = kept[1] } = entry;
    return [...judgementFaults(entry, path), ...stretchFaults({ from, to }, kept, path, true)];
  },
  apply: (entry, walk) => walk.inspect(entry),
});
