/** The part of an assessment that a task needs: the rig and its strengths, which are worked out once for all threads. */
import { type Assessed, type RigStrengths, rigStrengths } from "@secondline/scenarios";

/** Plain data that crosses to another thread unchanged. */
export interface KnownRig {
  readonly rig: Assessed["rig"];
  readonly strengths: RigStrengths;
}

const KNOWN_OF_ASSESSED = new WeakMap<Assessed, KnownRig>();

/** Break tests, which may be thousands, stay behind: runs need the strengths alone. */
export function knownOf(assessed: Assessed): KnownRig {
  const found = KNOWN_OF_ASSESSED.get(assessed) ?? {
    rig: assessed.rig,
    strengths: rigStrengths(assessed.rig, assessed.tests),
  };
  KNOWN_OF_ASSESSED.set(assessed, found);
  return found;
}
