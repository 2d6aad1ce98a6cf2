/** Makes the open runs of a shard, a few at a time, and writes each down as soon as it is done. */

import type { OrdersService } from "@secondline/runner";
import {
  eventBefore,
  type GoodRun,
  type PlanRun,
  type PlanRuns,
  type RunResult,
  resultLine,
} from "@secondline/scenarios";
import { englishWords } from "@secondline/words";
import { progressLine } from "../terminal.ts";
import { cancelled, unanswered } from "../unanswered.ts";

export interface RunsToMake {
  readonly plan: PlanRuns;
  readonly open: readonly number[];
  readonly runner: OrdersService;
  readonly jobs: number;
  readonly write: (line: string) => void;
}

/** Lanes besides one for each thread, so that no thread waits for the disk [-]. */
const SPARE_LANES = 1;

export async function makeRuns({ plan, open, runner, jobs, write }: RunsToMake): Promise<void> {
  const progress = progressLine();
  let [next, made] = [0, 0];
  let failure: unknown;
  const ids = new Set<string>();
  const stop = () => {
    failure ??= cancelled();
    for (const id of ids) void runner.cancel(id);
  };
  process.once("SIGINT", stop);
  const make = async (run: PlanRun, lane: string): Promise<RunResult> => {
    const { assessed } = run.point;
    const before = eventBefore(run.event);
    const earlier = before && (await make({ ...run, event: before }, lane));
    if (earlier && !earlier.ok) return { ok: false, trouble: { reason: "before" } };
    const order = plan.order(run, earlier as GoodRun | undefined);
    const answer = await runner.orders({ id: lane, orders: [{ assessed, order }] });
    if (answer.ok) return answer.value[0]!;
    throw unanswered(answer);
  };
  const lane = async (_: unknown, index: number) => {
    const id = `study ${index}`;
    ids.add(id);
    while (failure === undefined && next < open.length) {
      try {
        const run = plan.run(open[next++]!);
        const { rig } = run.point.assessed;
        const result = await make(run, id);
        if (failure !== undefined) return;
        // Runs that were lost, such as with a thread, are made again by the next call.
        if (result.ok || result.trouble.reason !== "cancelled") write(resultLine(run, rig.name, result));
        progress.show(++made / open.length, englishWords.eventTitle(rig, run.event));
      } catch (error) {
        failure ??= error;
      }
    }
  };
  try {
    await Promise.all(Array.from({ length: Math.min(open.length, jobs + SPARE_LANES) }, lane));
  } finally {
    progress.end();
    process.removeListener("SIGINT", stop);
  }
  if (failure !== undefined) throw failure;
}
