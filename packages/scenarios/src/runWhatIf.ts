/** One what-if from rig to outcome, in slices, so that whoever drives it can show progress and stop. */
import { type Accuracy, type Problem, type Recording, type RunResult, resultOf, startRun } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { WhatIf, WhatIfRun } from "./outcome.ts";
import { peakUncertainty } from "./richardson.ts";
import { type RigStrengths, rigStrengths } from "./rigStrengths.ts";
import { defaultDuration, toProblem } from "./toProblem.ts";
import { whatIfTitle } from "./whatIf.ts";
import { failedOutcome, whatIfOutcome } from "./whatIfOutcome.ts";

export interface StudyProgress {
  /** Share done, 0 to 1 [-]. */
  readonly done: number;
  /** What is being computed, in words. */
  readonly doing: string;
}

export interface RunOptions {
  readonly accuracy: Accuracy;
  /** Run again on another mesh and give the peaks a ±. */
  readonly estimate?: boolean;
  /** Simulated time [s]; default: long enough for the deepest drop. */
  readonly duration?: number;
}

/** Steps per slice: some milliseconds, so that progress is smooth and a cancel soon heard. */
const SLICE = 400;
/** A walker still on the way down at the end gets this much more time, this often [-]. */
const LONGER = 1.6;
const MOST_EXTENSIONS = 2;

/** Runs one what-if. Every `next()` does a few milliseconds of work; stop by not calling it again. */
export function* runWhatIf(rig: Rig, whatIf: WhatIf, options: RunOptions): Generator<StudyProgress, WhatIfRun, void> {
  const strengths = rigStrengths(rig);
  const doing = whatIfTitle(whatIf, rig.span);
  const share = options.estimate ? 0.35 : 1;
  const first = yield* scaled(runWith(rig, whatIf, strengths, options), 0, share, doing);
  if (!options.estimate || !first.recording) return first;
  const other = yield* scaled(
    runWith(rig, whatIf, strengths, { ...options, accuracy: otherMesh(options.accuracy) }),
    share,
    1,
    doing,
  );
  if (!other.recording) return { ...first, outcome: { ...first.outcome, ok: false, problem: NO_ESTIMATE } };
  const uncertainty = peakUncertainty(first.recording, other.recording);
  return { ...first, outcome: { ...first.outcome, peakUncertainty: uncertainty } };
}

const NO_ESTIMATE = "The run on the second mesh failed, so its uncertainty is not known.";

/** The mesh to compare with: a finer one, or of the finest the next coarser. */
export const otherMesh = (accuracy: Accuracy): Accuracy => (accuracy === "fine" ? "standard" : "fine");

/** Progress of a part of the work, as a stretch of the whole. */
export function* scaled<T>(
  work: Generator<number, T, void>,
  from: number,
  to: number,
  doing: string,
): Generator<StudyProgress, T, void> {
  let step = work.next();
  while (!step.done) {
    yield { done: from + (to - from) * step.value, doing };
    step = work.next();
  }
  return step.value;
}

/** Times at which a leash fall at a place pulls hardest, found earlier, by place [s]. */
export type CatchTimes = Map<number, number>;

/** One run with strengths known. Yields the share done. */
export function* runWith(
  rig: Rig,
  whatIf: WhatIf,
  strengths: RigStrengths,
  options: Omit<RunOptions, "estimate">,
  catches: CatchTimes = new Map(),
): Generator<number, WhatIfRun, void> {
  const caught = whatIf.kind === "mainFails" && whatIf.walker === "caught";
  const needsFall = caught && !catches.has(whatIf.at);
  if (needsFall) {
    const fall = yield* runWith(rig, { kind: "leashFall", at: whatIf.at }, strengths, options, catches);
    if (!fall.recording)
      return { outcome: failedOutcome(rig, whatIf, fall.outcome.problem ?? "The fall before it failed.") };
  }
  const cut = caught ? { cutTime: catches.get(whatIf.at)! } : {};
  let duration = options.duration ?? defaultDuration(rig) + (cut.cutTime ?? 0);
  for (let extension = 0; ; extension++) {
    const problem = toProblem(rig, whatIf, strengths.breaking, { ...cut, duration });
    const result = yield* solve(problem, options.accuracy);
    if (!result.ok) return { outcome: failedOutcome(rig, whatIf, result.message) };
    const outcome = whatIfOutcome(rig, whatIf, result.recording, strengths);
    if (stillSinking(result.recording) && outcome.caught) {
      if (extension < MOST_EXTENSIONS && options.duration === undefined) {
        duration *= LONGER;
        continue;
      }
      const message = `The walker was still on the way down after ${duration.toFixed(1)} s: the run is too short to judge.`;
      return { outcome: failedOutcome(rig, whatIf, message), recording: result.recording };
    }
    if (whatIf.kind === "leashFall") catches.set(whatIf.at, result.recording.peaks.leash.cfc60Time);
    return { outcome, recording: result.recording };
  }
}

/** The lowest point lies at the very end, and nothing ended the run early. */
function stillSinking(recording: Recording): boolean {
  const ended = recording.duration < recording.problem.duration - 0.01;
  return !ended && recording.walker.lowestTime > recording.duration - 0.05;
}

/** Runs the engine in slices; yields the share done. */
function* solve(problem: Problem, accuracy: Accuracy): Generator<number, RunResult, void> {
  const started = startRun(problem, { accuracy });
  if (!started.ok) return started;
  const { run } = started;
  while (run.advance(SLICE) === "running") yield run.progress;
  return resultOf(run);
}
