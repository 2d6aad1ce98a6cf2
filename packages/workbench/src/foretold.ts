/** How long runs will take, told before they are begun. */
import {
  type Accuracy,
  type Assessed,
  missingIn,
  type RigStrengths,
  rigStrengths,
  runWork,
  type WhatIf,
} from "@secondline/scenarios";

/** One core that does nothing else takes 1.3 to 2.2 × 10⁻⁸ for the demo rigs, and two beside each other a little more [s per element-step]. */
export const USUAL_STEP_TIME = 2.5e-8;
/** Events of which the work is looked at [-]. */
const SAMPLED_EVENTS = 8;

export interface Foretold {
  readonly runs: number;
  /** Time with so many jobs [s]. */
  readonly seconds: number;
}

export interface ToForetell {
  readonly assessed: Assessed;
  /** The events of the runs, in about equal shares. */
  readonly events: readonly WhatIf[];
  readonly runs: number;
  readonly accuracy: Accuracy;
  /** Runs made at a time. */
  readonly jobs: number;
  readonly strengths?: RigStrengths;
}

/** What a number of runs of events of one rig will take, about; what was kept from before makes it less. */
export function foretold({ assessed, events, runs, accuracy, jobs, ...given }: ToForetell): Foretold {
  const { rig, tests } = assessed;
  const there = events.filter((event) => !missingIn(event, rig));
  if (there.length === 0) return { runs: 0, seconds: 0 };
  const strengths = given.strengths ?? rigStrengths(rig, tests);
  const step = Math.max(1, Math.floor(there.length / SAMPLED_EVENTS));
  const sample = there.filter((_, i) => i % step === 0);
  const work = sample.reduce((sum, event) => sum + runWork(rig, strengths, event, accuracy), 0) / sample.length;
  return { runs, seconds: (runs * work * USUAL_STEP_TIME) / jobs };
}
