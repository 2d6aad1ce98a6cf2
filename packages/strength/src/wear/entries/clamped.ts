/** The webbing sits in a clamp that is not the weblock at an end of its span. */
import { isBefore } from "../../dates/calendarDate.ts";
import { recordFault, spotFaults } from "../faults.ts";
import { recordFact } from "../recordFacts.ts";
import { date as day, extent, force, position, present } from "../values.ts";
import { around } from "../webbingWalk.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const clamped = entryKind({
  event: "clamped",
  where: "anywhere",
  /** `until`: the last day in the clamp; if absent, the webbing is still in the clamp. */
  schema: entrySchema("clamped", {
    until: day.optional(),
    at: position,
    length: extent,
    load: force.optional(),
  }),
  read: (written) => present(written),
  faults({ at, until, date }, { kept, path }) {
    const faults = spotFaults(at, kept, path);
    if (until !== undefined && isBefore(until, date)) {
      const message = recordFact("clamp.offBeforeOn", { until: { day: `${until}` }, date: { day: `${date}` } });
      faults.push(recordFault(`${path}.until`, `${until}`, recordFact("expected.later", { date: `${date}` }), message));
    }
    return faults;
  },
  apply({ at, length, date, until, load }, walk) {
    // Its months are counted at the end of the walk, because its last day may lie after the date of the state.
    walk.mark({ kind: "clampMark", ...around(at, length), months: 0, ...present({ until, load }), since: date });
  },
});
