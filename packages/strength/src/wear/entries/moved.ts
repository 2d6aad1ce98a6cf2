/** The webbing is hung somewhere else on the same day. */
import { stretchFaults } from "../faults.ts";
import { placementShape, readPlacement } from "../placement.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const moved = entryKind({
  event: "moved",
  where: "hanging",
  schema: entrySchema("moved", placementShape),
  read: ({ date, event, ...place }) => ({ date, event, placement: readPlacement(place) }),
  faults: ({ placement }, { kept, path }) => stretchFaults(placement, kept, path),
  apply: ({ placement, date }, walk) => walk.hang(placement, date),
});
