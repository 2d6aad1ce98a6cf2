/** Runs a study with progress on the terminal; Ctrl-C stops it. */
import type { Rig } from "@secondline/rig";
import {
  type Answer,
  type ChancesRequest,
  InProcessRunner,
  type Progress,
  type StudyRequest,
} from "@secondline/runner";
import type { Chances, Outcome } from "@secondline/scenarios";
import { CommandFailure, EXIT } from "./failure.ts";
import { progressLine } from "./terminal.ts";

export function runStudy(rig: Rig, request: Omit<StudyRequest, "id" | "rig">, label = ""): Promise<Outcome> {
  return drive(label, (runner, id, report) => runner.study({ id, rig, ...request }, report));
}

export function runChances(rig: Rig, request: Omit<ChancesRequest, "id" | "rig">): Promise<Chances> {
  return drive("", (runner, id, report) => runner.chances({ id, rig, ...request }, report));
}

async function drive<T>(
  label: string,
  start: (runner: InProcessRunner, id: string, report: (progress: Progress) => void) => Promise<Answer<T>>,
): Promise<T> {
  const runner = new InProcessRunner();
  const line = progressLine();
  const id = "study";
  const stop = () => void runner.cancel(id);
  process.once("SIGINT", stop);
  try {
    const answer = await start(runner, id, ({ done, doing }) => {
      line.show(done, `${label}${doing}`);
    });
    line.end();
    if (answer.ok) return answer.value;
    throw new CommandFailure(answer.reason === "cancelled" ? EXIT.stopped : EXIT.audit, [answer.message]);
  } finally {
    line.end();
    process.removeListener("SIGINT", stop);
  }
}
