/** A file of its own, without what reads wear records and break tests: a page that has neither loads neither. */
import type { Rig } from "@secondline/rig";
import type { Assessed } from "./assessment.ts";
import { assessmentHashes } from "./inputHash.ts";

/** A rig by itself: nothing else is known. Throws nothing. */
export function assessRig(rig: Rig): Assessed {
  const known = { rig, tests: [], withholds: [] };
  return {
    ...known,
    taken: { judged: [] },
    notes: [],
    upkeep: { lapses: [] },
    ...assessmentHashes({ ...known, lapses: [] }),
  };
}
