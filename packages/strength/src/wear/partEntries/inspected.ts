/** Somebody looked at the part and judged it. The entry closes earlier reasons for an inspection. */
import { entrySchema } from "../entries/entryKind.ts";
import { judgementFaults, judgementShape } from "../judgement.ts";
import { present } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const inspected = partEntryKind({
  event: "inspected",
  where: "anywhere",
  schema: entrySchema("inspected", judgementShape),
  read: (written) => present(written),
  faults: (entry, path) => judgementFaults(entry, path),
  apply: (entry, walk) => walk.inspect(entry),
});
