/** Runs a study with progress on the terminal; Ctrl-C stops it. */
import type { Rig } from "@secondline/rig";
import { InProcessRunner, type StudyRequest } from "@secondline/runner";
import type { Outcome } from "@secondline/scenarios";
import { CommandFailure, EXIT } from "./failure.ts";
import { progressLine } from "./terminal.ts";

export async function runStudy(rig: Rig, request: Omit<StudyRequest, "id" | "rig">, label = ""): Promise<Outcome> {
  const runner = new InProcessRunner();
  const line = progressLine();
  const stop = () => void runner.cancel("study");
  process.once("SIGINT", stop);
  try {
    const answer = await runner.study({ id: "study", rig, ...request }, ({ done, doing }) => {
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
