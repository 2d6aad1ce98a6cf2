/** A seam is sewn into the webbing. */
import { spotFaults } from "../faults.ts";
import { extent, position } from "../values.ts";
import { around } from "../webbingWalk.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const sewn = entryKind({
  event: "sewn",
  where: "anywhere",
  schema: entrySchema("sewn", { at: position, length: extent }),
  read: (written) => written,
  faults: ({ at }, { kept, path }) => spotFaults(at, kept, path),
  apply: ({ at, length, date }, walk) => walk.mark({ kind: "stitching", ...around(at, length), since: date }),
});
