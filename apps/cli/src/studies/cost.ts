/**
 * The cost of a study before it begins: the time, by the engine's own estimate of its work and the speed of this machine, and
 * the room on the disk.
 */
import { statfsSync } from "node:fs";
import { executeRun, type PlanRuns } from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { saySweep, timeText } from "@secondline/words/sweep";
import { USUAL_STEP_TIME } from "@secondline/workbench";

/** Number of runs, spread over the plan, whose work is estimated [-]. */
const SAMPLED_RUNS = 24;
/** The speed is not measured for a study shorter than this [s of one core]. */
const LEAST_MEASURED_TIME = 30;
/** A line of results, about [bytes]. */
const LINE_BYTES = 1800;

export interface StudyCost {
  readonly runs: number;
  /** Time of one core [s]. */
  readonly seconds: number;
  readonly bytes: number;
  readonly measured: boolean;
}

/** Cost of the `open` runs of a plan. */
export function costOf(plan: PlanRuns, open: number): StudyCost {
  const count = Math.min(SAMPLED_RUNS, plan.count);
  const works = Array.from({ length: count }, (_, i) => ({
    number: Math.floor(((i + 0.5) * plan.count) / count),
    work: plan.work(Math.floor(((i + 0.5) * plan.count) / count)),
  }));
  const mean = works.reduce((sum, { work }) => sum + work, 0) / count;
  const usual = mean * open * USUAL_STEP_TIME;
  const measured = usual > LEAST_MEASURED_TIME ? speedOf(plan, works) : undefined;
  const seconds = mean * open * (measured ?? USUAL_STEP_TIME);
  return { runs: open, seconds, bytes: open * LINE_BYTES, measured: measured !== undefined };
}

/** Measures the speed with one run that needs no run before it; undefined if all runs need one [s per element-step]. */
function speedOf(
  plan: PlanRuns,
  works: readonly { readonly number: number; readonly work: number }[],
): number | undefined {
  for (const { number, work } of [...works].sort((a, b) => a.work - b.work)) {
    const run = plan.run(number);
    if ("walker" in run.event && run.event.walker === "caught") continue;
    if (run.event.kind === "givesWay") continue;
    const begun = performance.now();
    const steps = executeRun(run.point.assessed.rig, run.point.strengths, plan.order(run));
    while (!steps.next().done);
    return (performance.now() - begun) / 1000 / work;
  }
  return undefined;
}

/** Numbers of cores for which the cost is told [-]. */
const CORE_COUNTS = [1, 16, 1000] as const;
/** "About 2 hours on one core, 8 minutes on 16, 8 s on 1000." No core makes less than one run. */
export function costText({ runs, seconds, bytes, measured }: StudyCost): string {
  const on = (cores: number) => timeText((seconds * Math.ceil(runs / cores)) / Math.max(1, runs));
  const [one, some, many] = CORE_COUNTS.map(on);
  return saySweep("study.cost", {
    runs,
    one: one!,
    some: some!,
    many: many!,
    room:
      bytes < 1e9 ? `${Math.max(1, Math.ceil(bytes / 1e6))} MB` : `${quantity.number(Math.ceil(bytes / 1e8) / 10)} GB`,
    basis: saySweep(measured ? "study.basis.measured" : "study.basis.usual"),
  });
}

/** Room that is left in a folder [bytes]. */
export function roomIn(folder: string): number {
  const { bavail, bsize } = statfsSync(folder);
  return bavail * bsize;
}
