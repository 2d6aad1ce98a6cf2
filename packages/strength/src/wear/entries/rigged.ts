/** The webbing is hung up. */
import { stretchFaults } from "../faults.ts";
import { placementShape, readPlacement } from "../placement.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const rigged = entryKind({
  event: "rigged",
  where: "down",
  schema: entrySchema("rigged", placementShape),
  read: ({ date, event, ...place }) => ({ date, event, placement: readPlacement(place) }),
  faults: ({ placement }, { kept, path }) => stretchFaults(placement, kept, path),
  apply: ({ placement, date }, walk) => walk.hang(placement, date),
});
