/** What becomes of the walker over all events: whether something catches, and how near the ground is. */

import type { GoodRun } from "../run/runFacts.ts";
import type { EventRuns } from "./demand.ts";

export interface FallFacts {
  /** Events in which some run ends with nothing holding the walker; the ground is counted apart. */
  readonly notCaught: readonly number[];
  /** Events in which some run brings the feet to the ground. */
  readonly onGround: readonly number[];
  /** Least height of the feet above the ground, and the event; absent when no ground is known [m]. */
  readonly leastFeet?: { readonly event: number; readonly height: number };
  readonly deepest?: { readonly event: number; readonly drop: number };
}

export const meetsGround = (run: GoodRun): boolean =>
  run.lostBecause === "ground" || (run.feetClearance !== undefined && run.feetClearance <= 0);

export function fallFacts(events: readonly EventRuns[]): FallFacts {
  const where = (is: (run: GoodRun) => boolean) => events.filter(({ runs }) => runs.some(is)).map(({ index }) => index);
  let leastFeet: FallFacts["leastFeet"];
  let deepest: FallFacts["deepest"];
  for (const { index, runs } of events) {
    for (const { feetClearance, drop } of runs) {
      if (feetClearance !== undefined && !(leastFeet && leastFeet.height <= feetClearance)) {
        leastFeet = { event: index, height: feetClearance };
      }
      if (!deepest || drop > deepest.drop) deepest = { event: index, drop };
    }
  }
  return {
    notCaught: where((run) => run.caughtBy === "nothing" && !meetsGround(run)),
    onGround: where(meetsGround),
    ...(leastFeet ? { leastFeet } : {}),
    ...(deepest ? { deepest } : {}),
  };
}
