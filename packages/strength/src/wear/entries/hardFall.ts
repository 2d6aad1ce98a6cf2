/** A fall that nobody planned for: harder than a leash fall of one walker, or caught by the backup. No factor is known for it. */
import { stretchFaults } from "../faults.ts";
import { position, present, text } from "../values.ts";
import { entryKind, entrySchema } from "./entryKind.ts";

export const hardFall = entryKind({
  event: "hardFall",
  where: "hanging",
  /** Without a place the whole webbing is in doubt. */
  schema: entrySchema("hardFall", { from: position.optional(), to: position.optional(), note: text.optional() }),
  read: (written) => present(written),
  faults({ from, to }, { kept, path }) {
    return from === undefined && to === undefined
      ? []
      : stretchFaults({ from: from ?? kept[0], to: to ?? kept[1] }, kept, path, true);
  },
  apply: (entry, walk) => walk.needInspection({ ...entry, what: "hardFall" }),
});
