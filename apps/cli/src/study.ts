/** Runs studies and chances with progress on the terminal; Ctrl-C stops them. */
import type { Answer, Progress, RunnerService } from "@secondline/runner";
import {
  type Assessed,
  type Chances,
  type ChancesOptions,
  type Found,
  type SearchOptions,
} from "@secondline/scenarios";
import { englishWords } from "@secondline/words";
import { type Computing, runnerFor } from "./computing.ts";
import { CommandFailure, EXIT } from "./failure.ts";
import { progressLine } from "./terminal.ts";

export interface StudyCall extends Computing {
  /** Said before what is being run. */
  readonly label?: string;
}

export function runStudy(assessed: Assessed, options: SearchOptions, call: StudyCall = {}): Promise<Found> {
  return drive(assessed, call, (runner, id, report) => runner.study({ id, assessed, ...options }, report));
}

export function runChances(assessed: Assessed, options: ChancesOptions, call: StudyCall = {}): Promise<Chances> {
  return drive(assessed, call, (runner, id, report) => runner.chances({ id, assessed, ...options }, report));
}

type Start<T> = (runner: RunnerService, id: string, report: (progress: Progress) => void) => Promise<Answer<T>>;

async function drive<T>({ rig }: Assessed, { label = "", ...computing }: StudyCall, start: Start<T>): Promise<T> {
  const runner = runnerFor(computing);
  const line = progressLine();
  const id = "study";
  const stop = () => void runner.cancel(id);
  process.once("SIGINT", stop);
  try {
    const answer = await start(runner, id, (progress) => line.show(progress.done, `${label}${doingOf(rig, progress)}`));
    line.end();
    if (answer.ok) return answer.value;
    throw new CommandFailure(answer.reason === "cancelled" ? EXIT.stopped : EXIT.audit, [answer.message]);
  } finally {
    line.end();
    process.removeListener("SIGINT", stop);
  }
}

const doingOf = (rig: Assessed["rig"], { doing, step = "" }: Progress): string =>
  doing ? englishWords.eventTitle(rig, doing) : step;
