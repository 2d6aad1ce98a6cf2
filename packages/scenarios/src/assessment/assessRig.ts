/** A file of its own, without what reads wear records and break tests: a page that has neither loads neither. */
import type { Rig } from "@secondline/rig";
import type { Assessed } from "./assessment.ts";
import { inputHash } from "./inputHash.ts";

/** A rig by itself: nothing else is known. Throws nothing. */
export function assessRig(rig: Rig): Assessed {
  const hash = inputHash({ rig, tests: [], withholds: [] });
  return { rig, tests: [], taken: { judged: [] }, notes: [], withholds: [], hash };
}
