/** Drives the engine in slices, so that whoever waits can show progress and stop. */
import {
  type Problem,
  resultOf,
  type Simulation,
  type SimulationOptions,
  type SimulationResult,
  startRun,
} from "@secondline/engine";

/** Some milliseconds, so that progress is smooth and a cancel soon heard. */
const STEPS_PER_SLICE = 400;
/** Step of the second try at a run whose numbers went wrong, as a share of the first one's [-]. */
const RETRY_STEP_SHARE = 0.5;

/** Watches a run between slices. */
export interface Watch {
  over(): boolean;
  /** How much coarser the mesh may be from here on [-]; undefined: as it is. */
  coarser?(): number | undefined;
}

/** How a run may end before its time. */
export interface EndsEarly {
  /** Made for each try of the run. */
  readonly watch: (run: Simulation) => Watch;
  /** How long a run like this usually takes [s]. */
  readonly usually: number;
}
/** Share done that a run has reached when it has taken as long as usual [-]. */
const USUAL_DONE_SHARE = 0.9;

/** Yields the share done. Runs once more with half the step, on one mesh to the end, when the numbers went wrong. */
export function* solveInSlices(
  problem: Problem,
  options: SimulationOptions,
  early?: EndsEarly,
): Generator<number, SimulationResult, void> {
  const first = yield* solveOnce(problem, options, early);
  if (first.ok || (first.reason !== "audit" && first.reason !== "diverged")) return first;
  return yield* solveOnce(problem, { ...options, stepShare: RETRY_STEP_SHARE }, early, false);
}

function* solveOnce(
  problem: Problem,
  options: SimulationOptions,
  early: EndsEarly | undefined,
  mayCoarsen = true,
): Generator<number, SimulationResult, void> {
  const started = startRun(problem, options);
  if (!started.ok) return started;
  const { run } = started;
  const watch = early?.watch(run);
  let coarser = 0;
  let wanted = 0;
  while (run.advance(STEPS_PER_SLICE) === "running") {
    if (watch?.over()) {
      run.finish();
      continue;
    }
    const next = mayCoarsen ? (watch?.coarser?.() ?? 0) : 0;
    if (next !== wanted && next > coarser && run.goOn(next)) coarser = next;
    wanted = next;
    yield early ? shareDone(run.time, early.usually, problem.duration) : run.progress;
  }
  return resultOf(run);
}

/** Quick up to the usual time, slow from there to the longest there is. */
function shareDone(time: number, usually: number, longest: number): number {
  if (time < usually) return (USUAL_DONE_SHARE * time) / usually;
  return USUAL_DONE_SHARE + ((1 - USUAL_DONE_SHARE) * (time - usually)) / (longest - usually);
}
