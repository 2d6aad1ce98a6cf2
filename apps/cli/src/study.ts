/** Runs studies and chances with progress on the terminal; Ctrl-C stops them. */
import type { Progress, RunnerService, ServiceAnswer } from "@secondline/runner";
import {
  type Assessed,
  type Chances,
  type ChancesOptions,
  DEFAULT_DRAWS,
  type SearchOptions,
  type SearchResult,
} from "@secondline/scenarios";
import { englishWords } from "@secondline/words";
import { sayRuns } from "@secondline/words/terminal/runs";
import { foretold } from "@secondline/workbench";
import { type Computing, jobsOf, runnerFor } from "./computing.ts";
import { foretoldSearch, tell } from "./foretold.ts";
import { progressLine } from "./terminal.ts";
import { unanswered } from "./unanswered.ts";

export interface StudyCall extends Computing {
  /** Text before the name of the current run. */
  readonly label?: string;
}

export function runStudy(assessed: Assessed, options: SearchOptions, call: StudyCall = {}): Promise<SearchResult> {
  return runWithProgress(assessed, call, (runner, id, report) => {
    tell(foretoldSearch(assessed, options, call), call);
    return runner.study({ id, assessed, ...options }, report);
  });
}

export function runChances(assessed: Assessed, options: ChancesOptions, call: StudyCall = {}): Promise<Chances> {
  const { whatIf, runs = DEFAULT_DRAWS, accuracy = "standard" } = options;
  return runWithProgress(assessed, call, (runner, id, report) => {
    tell(foretold({ assessed, events: [whatIf], runs, accuracy, jobs: jobsOf(call) }), call);
    return runner.chances({ id, assessed, ...options }, report);
  });
}

type Start<T> = (runner: RunnerService, id: string, report: (progress: Progress) => void) => Promise<ServiceAnswer<T>>;

/** Names of steps that make no runs. */
const STEP_NAMES: Readonly<Record<string, string>> = { chances: sayRuns("step.chances") };

async function runWithProgress<T>(
  { rig }: Assessed,
  { label = "", ...computing }: StudyCall,
  start: Start<T>,
): Promise<T> {
  const runner = runnerFor(computing);
  const line = progressLine();
  const id = "study";
  const stop = () => void runner.cancel(id);
  process.once("SIGINT", stop);
  try {
    const answer = await start(runner, id, ({ done, doing, step = "" }) => {
      const what = doing ? englishWords.eventTitle(rig, doing) : (STEP_NAMES[step] ?? step);
      line.show(done, `${label}${what}`);
    });
    line.end();
    if (answer.ok) return answer.value;
    throw unanswered(answer);
  } finally {
    line.end();
    process.removeListener("SIGINT", stop);
  }
}
