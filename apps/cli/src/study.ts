/** Runs a study with progress on the terminal; Ctrl-C stops it. */
import { setImmediate } from "node:timers/promises";
import {
  type Assessed,
  type Chances,
  type ChancesOptions,
  chances,
  type Found,
  type SearchOptions,
  type StudyProgress,
  study,
} from "@secondline/scenarios";
import { englishWords } from "@secondline/words";
import { CommandFailure, EXIT } from "./failure.ts";
import { progressLine } from "./terminal.ts";

export const runStudy = (assessed: Assessed, options: SearchOptions, label = ""): Promise<Found> =>
  drive(assessed, study(assessed, options), label);

export const runChances = (assessed: Assessed, options: ChancesOptions): Promise<Chances> =>
  drive(assessed, chances(assessed, options), "");

async function drive<T>({ rig }: Assessed, work: Generator<StudyProgress, T, void>, label: string): Promise<T> {
  const line = progressLine();
  let stopped = false;
  const stop = () => {
    stopped = true;
  };
  process.once("SIGINT", stop);
  try {
    for (let step = work.next(); !stopped; step = work.next()) {
      if (step.done) return step.value;
      const { done, doing, step: name = "" } = step.value;
      line.show(done, `${label}${doing ? englishWords.eventTitle(rig, doing) : name}`);
      await setImmediate();
    }
    throw new CommandFailure(EXIT.stopped, ["Cancelled."]);
  } finally {
    line.end();
    process.removeListener("SIGINT", stop);
  }
}
