/** The part is put up. If the entry does not mention shade, the part hangs in full light. */
import { entrySchema } from "../entries/entryKind.ts";
import { share } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const putUp = partEntryKind({
  event: "putUp",
  where: "down",
  schema: entrySchema("putUp", { sun: share.optional() }),
  read: ({ sun, ...entry }) => ({
    ...entry,
    ...(sun === undefined ? { sun: 1, sunAssumed: true as const } : { sun }),
  }),
  apply: ({ sun }, walk) => walk.putUp(sun),
});
