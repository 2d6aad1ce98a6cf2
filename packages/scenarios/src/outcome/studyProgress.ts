/** How far a study has come, and what it knows so far. */
import type { WhatIf } from "../events/registry.ts";
import type { Outcome } from "./outcome.ts";

export interface StudyProgress {
  /** Share done, 0 to 1; never goes back [-]. */
  readonly done: number;
  /** The event that is being run. */
  readonly doing?: WhatIf;
  /** What else is being done, in place of an event. */
  readonly step?: string;
  readonly made?: number;
  /** How many runs there will be, about; only of a sweep. */
  readonly expected?: number;
  /** How many what-ifs the whole set has. */
  readonly of?: number;
  /** What is known so far: never that the rig holds. */
  readonly soFar?: Outcome;
}
