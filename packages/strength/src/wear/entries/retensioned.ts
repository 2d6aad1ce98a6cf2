/** Webbing is pulled out of the span through the weblock at an anchor, or let in when the number is negative. */
import { lengthRange, recordFault } from "../faults.ts";
import { pulledPlacement } from "../placement.ts";
import { recordFact } from "../recordFacts.ts";
import { pulled, side } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const retensioned = entryKind({
  event: "retensioned",
  where: "hanging",
  schema: entrySchema("retensioned", { end: side, pulled }),
  read: (written) => written,
  faults(entry, { kept, placement, path }) {
    if (placement === undefined) return [];
    const { from, to } = pulledPlacement(placement, entry.end, entry.pulled);
    if (from >= kept[0] && to <= kept[1] && from < to) return [];
    const got = recordFact("got.span", lengthRange(from, to));
    const expected = recordFact("expected.within", lengthRange(...kept));
    return [recordFault(`${path}.pulled`, got, expected, recordFact("span.outside", { got }))];
  },
  apply: (entry, walk) => walk.pull(entry.end, entry.pulled, entry.date),
});
