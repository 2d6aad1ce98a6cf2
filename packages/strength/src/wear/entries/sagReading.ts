/** The sag of the line under a known walker was read. */
import { present, quantity, text } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const sagReading = entryKind({
  event: "sagReading",
  where: "hanging",
  /** `sag`: below the straight line between the anchors, where the walker stands; `within`: how far off it may be. */
  schema: entrySchema("sagReading", {
    sag: quantity("length", 0.01, 500, ["1 cm", "500 m"]),
    within: quantity("length", 0, 50, ["0 m", "50 m"]).optional(),
    walker: quantity("mass", 20, 250, ["20 kg", "250 kg"]),
    at: quantity("position", 0.01, 0.99, ["0.01", "0.99"]).optional(),
    note: text.optional(),
  }),
  read: (written) => present(written),
  apply({ event: _event, note: _note, date, ...reading }, walk) {
    walk.reading({ kind: "sag", on: date.toString(), ...reading });
  },
});
