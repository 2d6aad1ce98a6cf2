/** A new part of the same kind takes its place. It may have lain on a shelf: without a word on when it was made its age is unknown. */
import { isBefore } from "../../dates/calendarDate.ts";
import { entrySchema } from "../entries/entryKind.ts";
import { recordFault } from "../faults.ts";
import { recordFact } from "../recordFacts.ts";
import { date as day, present } from "../values.ts";
import { partEntryKind } from "./partEntryKind.ts";

export const replaced = partEntryKind({
  event: "replaced",
  where: "anywhere",
  /** `made`: the day on which the new part was made. */
  schema: entrySchema("replaced", { made: day.optional() }),
  read: (written) => present(written),
  faults({ made, date }, path) {
    if (made === undefined || !isBefore(date, made)) return [];
    const expected = recordFact("expected.earlier", { date: `${date}` });
    const message = recordFact("replaced.beforeMade", { date: { day: `${date}` }, made: { day: `${made}` } });
    return [recordFault(`${path}.made`, `${made}`, expected, message)];
  },
  apply: ({ date, made }, walk) => walk.replace(date, made),
});
