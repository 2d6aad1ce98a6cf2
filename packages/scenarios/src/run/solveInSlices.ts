/** Drives the engine in slices, so that whoever waits can show progress and stop. */
import { type Problem, type RunResult, resultOf, type SimulationOptions, startRun } from "@secondline/engine";

/** Steps per slice: some milliseconds, so that progress is smooth and a cancel soon heard. */
const SLICE = 400;
/** Step of the second try at a run whose numbers went wrong, as a share of the first one's [-]. */
const RETRY_STEP_SHARE = 0.5;

/** Yields the share done. Runs once more with half the step when the numbers went wrong. */
export function* solveInSlices(problem: Problem, options: SimulationOptions): Generator<number, RunResult, void> {
  const first = yield* solveOnce(problem, options);
  if (first.ok || (first.reason !== "audit" && first.reason !== "diverged")) return first;
  return yield* solveOnce(problem, { ...options, stepShare: RETRY_STEP_SHARE });
}

function* solveOnce(problem: Problem, options: SimulationOptions): Generator<number, RunResult, void> {
  const started = startRun(problem, options);
  if (!started.ok) return started;
  const { run } = started;
  while (run.advance(SLICE) === "running") yield run.progress;
  return resultOf(run);
}
