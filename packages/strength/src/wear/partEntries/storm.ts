/** A storm, or long flutter. No factor is known for it. */
import { entrySchema } from "../entries/entryKind.ts";
import { date as day, present, text } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const storm = partEntryKind({
  event: "storm",
  where: "up",
  schema: entrySchema("storm", { until: day.optional(), note: text.optional() }),
  read: (written) => present(written),
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "storm" }),
});
