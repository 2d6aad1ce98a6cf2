/** The share of the light that falls on the webbing changes. */
import { share } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const shade = entryKind({
  event: "shade",
  where: "hanging",
  schema: entrySchema("shade", { sun: share }),
  read: (written) => written,
  apply: ({ sun }, walk) => walk.shade(sun),
});
