/** Damage that was seen: abrasion, a glazed place or a cut, as a share of the width. */
import * as z from "zod";
import { stretchFaults } from "../faults.ts";
import { position, share } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const damage = entryKind({
  event: "damage",
  where: "anywhere",
  schema: entrySchema("damage", {
    kind: z.enum(["abrasion", "heat", "cut"]),
    from: position,
    to: position,
    depth: share,
  }),
  read: (written) => written,
  faults: (entry, { kept, path }) => stretchFaults(entry, kept, path, entry.kind === "cut"),
  apply: ({ kind, from, to, depth, date }, walk) => walk.mark({ kind, from, to, depth, since: date }),
});
