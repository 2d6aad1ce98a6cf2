/** The tension of the line was read, with nobody on it or under a known walker. */
import { force, present, quantity, text } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const tensionReading = entryKind({
  event: "tensionReading",
  where: "hanging",
  /** `within`: how far off the reading may be. */
  schema: entrySchema("tensionReading", {
    tension: quantity("force", 50, 100e3, ["50 N", "100 kN"]),
    within: force.optional(),
    walker: quantity("mass", 20, 250, ["20 kg", "250 kg"]).optional(),
    at: quantity("position", 0.01, 0.99, ["0.01", "0.99"]).optional(),
    note: text.optional(),
  }),
  read: (written) => present(written),
  apply({ event: _event, note: _note, date, ...reading }, walk) {
    walk.reading({ kind: "tension", on: date.toString(), ...reading });
  },
});
