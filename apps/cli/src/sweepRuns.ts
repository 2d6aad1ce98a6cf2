/** Makes the runs that a sweep orders, with progress on the terminal; Ctrl-C stops them. */
import { type Knob, type SweepOptions, type SweepPoints, type Swept, sweep } from "@secondline/scenarios";
import { englishWords } from "@secondline/words";
import { foretold } from "@secondline/workbench";
import { type Computing, jobsOf, runnerFor } from "./computing.ts";
import { tell } from "./foretold.ts";
import { progressLine } from "./terminal.ts";
import { unanswered } from "./unanswered.ts";

export async function runSweep(
  points: SweepPoints,
  knobs: readonly Knob[],
  options: SweepOptions,
  computing: Computing,
): Promise<Swept> {
  const runner = runnerFor(computing);
  const line = progressLine();
  const id = "sweep";
  const stop = () => void runner.cancel(id);
  const { rig } = points.points[0]!.assessed;
  process.once("SIGINT", stop);
  try {
    const work = sweep(points, knobs, options);
    let step = work.next();
    if (!step.done) {
      const { assessed } = points.points[0]!;
      const events = step.value.orders.map(({ order }) => order.event);
      const { expected } = step.value;
      const jobs = jobsOf(computing);
      tell(foretold({ assessed, events, runs: expected, accuracy: options.accuracy, jobs }), computing);
    }
    while (!step.done) {
      const { orders, made, expected } = step.value;
      const answer = await runner.orders({ id, orders }, ({ made: now = 0, doing }) =>
        line.show(Math.min(1, (made + now) / expected), doing ? englishWords.eventTitle(rig, doing) : ""),
      );
      if (!answer.ok) throw unanswered(answer);
      step = work.next(answer.value);
    }
    return step.value;
  } finally {
    line.end();
    process.removeListener("SIGINT", stop);
  }
}
