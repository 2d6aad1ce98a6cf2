/** Leash falls caught on a stretch. */
import { lengthRange, recordFault, stretchFaults } from "../faults.ts";
import { recordFact } from "../recordFacts.ts";
import { count, position } from "../values.ts";
import { type CheckedEntry, entryKind, entrySchema } from "./entryKind.ts";

export const falls = entryKind({
  event: "falls",
  where: "hanging",
  schema: entrySchema("falls", { from: position, to: position, falls: count }),
  read: (written) => written,
  faults: (entry, checked) => [...stretchFaults(entry, checked.kept, checked.path), ...besideSpan(entry, checked)],
  apply: ({ from, to, falls: number, date }, walk) =>
    walk.mark({ kind: "fallZone", from, to, falls: number, since: date }),
});

/** Falls are caught on the loaded span. A place outside of it would be lost without a word. */
function besideSpan({ from, to }: { readonly from: number; readonly to: number }, { placement, path }: CheckedEntry) {
  if (placement === undefined || (from < placement.to && to > placement.from)) return [];
  const got = recordFact("range", lengthRange(from, to));
  const hanging = lengthRange(placement.from, placement.to);
  const message = recordFact("falls.beside", { got, loaded: recordFact("range", hanging) });
  return [recordFault(`${path}.from`, got, recordFact("expected.placeWithin", hanging), message)];
}
