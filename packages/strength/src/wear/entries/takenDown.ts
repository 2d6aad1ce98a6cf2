/** The webbing comes down. */
import { entryKind, entrySchema } from "./entryKind.ts";

export const takenDown = entryKind({
  event: "takenDown",
  where: "hanging",
  schema: entrySchema("takenDown", {}),
  read: (written) => written,
  apply: ({ date }, walk) => walk.takeDown(date),
});
