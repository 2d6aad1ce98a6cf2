/** A storm, or long flutter. No factor is known for it. */
import { date as day, present, text } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const storm = entryKind({
  event: "storm",
  where: "hanging",
  /** `until`: the last day of the storm. */
  schema: entrySchema("storm", { until: day.optional(), note: text.optional() }),
  read: (written) => present(written),
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "storm" }),
});
