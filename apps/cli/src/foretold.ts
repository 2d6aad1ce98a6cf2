/** How long something will take, said before it is begun where somebody would wonder. */
import {
  type Accuracy,
  type Assessed,
  missingIn,
  RUNS,
  rigStrengths,
  runWork,
  type SearchOptions,
  type WhatIf,
  whatIfSet,
} from "@secondline/scenarios";
import { saySweep } from "@secondline/words/sweep";
import { type Computing, jobsOf } from "./computing.ts";
import { timeText, USUAL_SPEED } from "./studies/cost.ts";
import { message } from "./terminal.ts";

/** Less than this nobody needs to be told of [s]. */
const WORTH_SAYING = 30;
/** Events of which the work is looked at [-]. */
const SAMPLED = 8;

export interface Foretold {
  readonly runs: number;
  /** By so many jobs [s]. */
  readonly seconds: number;
}

/** What a number of runs of events of one rig will take, about; what was kept from before makes it less. */
export function foretold(
  { rig, tests }: Assessed,
  events: readonly WhatIf[],
  runs: number,
  accuracy: Accuracy,
  computing: Computing,
  strengths = rigStrengths(rig, tests),
): Foretold {
  const there = events.filter((event) => !missingIn(event, rig));
  if (there.length === 0) return { runs: 0, seconds: 0 };
  const step = Math.max(1, Math.floor(there.length / SAMPLED));
  const sample = there.filter((_, i) => i % step === 0);
  const work = sample.reduce((sum, event) => sum + runWork(rig, strengths, event, accuracy), 0) / sample.length;
  return { runs, seconds: (runs * work * USUAL_SPEED) / jobsOf(computing) };
}

/** Of a search as it is asked for. */
export function foretoldSearch(assessed: Assessed, options: SearchOptions, computing: Computing): Foretold {
  const { rig, tests } = assessed;
  const { whatIfs, size = "full", runs = RUNS, accuracy } = options;
  const strengths = rigStrengths(rig, tests);
  const events = whatIfs ?? whatIfSet({ rig, weakPlaces: strengths.weakPlaces, size });
  const made = whatIfs || size === "quick" ? events.length : Math.max(runs, events.length);
  return foretold(assessed, events, (options.estimate ? 2 : 1) * made, accuracy, computing, strengths);
}

/** Says it on stderr, where it is long. */
export function tell({ runs, seconds }: Foretold, computing: Computing): void {
  if (seconds < WORTH_SAYING) return;
  message(saySweep("study.foretold", { time: timeText(seconds), runs, jobs: jobsOf(computing) }));
}
