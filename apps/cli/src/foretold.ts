/** The time that a computation will take, told beforehand if it is long. */
import { type Assessed, DEFAULT_RUNS, rigStrengths, type SearchOptions, whatIfSet } from "@secondline/scenarios";
import { saySweep, timeText } from "@secondline/words/sweep";
import { type Foretold, foretold } from "@secondline/workbench";
import { type Computing, jobsOf } from "./computing.ts";
import { message } from "./terminal.ts";

/** A shorter time is not told [s]. */
const LEAST_TOLD_TIME = 30;

export interface ForetoldSearch extends Foretold {
  /** A search has about these runs to spend, and may need fewer. */
  readonly mayBeFewer: boolean;
}

/** The time of a search with its options. */
export function foretoldSearch(assessed: Assessed, options: SearchOptions, computing: Computing): ForetoldSearch {
  const { rig, tests } = assessed;
  const { whatIfs, size = "full", runs = DEFAULT_RUNS, accuracy } = options;
  const strengths = rigStrengths(rig, tests);
  const events = whatIfs ?? whatIfSet({ rig, weakPlaces: strengths.weakPlaces, size });
  const mayBeFewer = !whatIfs && size !== "quick";
  const made = mayBeFewer ? Math.max(runs, events.length) : events.length;
  const jobs = jobsOf(computing);
  return {
    mayBeFewer,
    ...foretold({ assessed, events, runs: (options.estimate ? 2 : 1) * made, accuracy, jobs, strengths }),
  };
}

/** Tells the time on stderr, if it is long. */
export function tell(
  { runs, seconds, mayBeFewer = false }: Foretold & Partial<ForetoldSearch>,
  computing: Computing,
): void {
  if (seconds < LEAST_TOLD_TIME) return;
  const sentence = mayBeFewer ? "search.foretold" : "study.foretold";
  message(saySweep(sentence, { time: timeText(seconds), runs, jobs: jobsOf(computing) }));
}
