/** The share of the light that falls on the part changes. */
import { entrySchema } from "../entries/entryKind.ts";
import { share } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const shade = partEntryKind({
  event: "shade",
  where: "up",
  schema: entrySchema("shade", { sun: share }),
  read: (written) => written,
  apply: ({ sun }, walk) => walk.putUp(sun),
});
