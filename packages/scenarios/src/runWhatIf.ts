/** One what-if from rig to outcome, in slices, so that whoever drives it can show progress and stop. */
import {
  type Accuracy,
  doubtful,
  type Problem,
  type Recording,
  type RunResult,
  resultOf,
  type SimulationOptions,
  startRun,
  uncertaintyOf,
} from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { BreakTest } from "@secondline/strength";
import { noSuchLeg } from "./anchorLegs.ts";
import { fate } from "./fate.ts";
import { overloadedLines } from "./loads.ts";
import type { WhatIf, WhatIfRun } from "./outcome.ts";
import { type RigStrengths, rigStrengths } from "./rigStrengths.ts";
import { defaultDuration, type LineName, toProblem } from "./toProblem.ts";
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
  /** Own break tests, in place of published factors where there are some. */
  readonly breakTests?: readonly BreakTest[];
}

/** Steps per slice: some milliseconds, so that progress is smooth and a cancel soon heard. */
const SLICE = 400;
/** A walker still on the way down at the end gets this much more time, this often [-]. */
const LONGER = 1.6;
const MOST_EXTENSIONS = 2;

/** Runs one what-if. Every `next()` does a few milliseconds of work; stop by not calling it again. */
export function* runWhatIf(rig: Rig, whatIf: WhatIf, options: RunOptions): Generator<StudyProgress, WhatIfRun, void> {
  const strengths = rigStrengths(rig, options.breakTests);
  const doing = whatIfTitle(whatIf, rig.span);
  const share = options.estimate ? 0.2 : 1;
  const first = yield* scaled(runWith(rig, whatIf, strengths, options), 0, share, doing);
  if (!options.estimate || !first.recording) return first;
  const unknown = (problem: string) => ({ ...first, outcome: { ...first.outcome, ok: false, problem } });
  const mesh = { ...options, accuracy: otherMesh(options.accuracy) };
  const other = yield* scaled(runWith(rig, whatIf, strengths, mesh), share, 1 - share, doing);
  if (!other.recording) return unknown(NO_ESTIMATE);
  let twin: WhatIfRun | undefined;
  if (peaksDoubtful(first.recording, other.recording)) {
    twin = yield* scaled(runWith(twinOf(rig), whatIf, strengths, options), 1 - share, 1, doing);
    if (!twin.recording) return unknown(NO_ESTIMATE);
  }
  const { sameBreaks, peaks } = uncertaintyOf(first.recording, other.recording, twin?.recording);
  if (!sameBreaks) return unknown(OTHER_BREAKS);
  const { leash, mainA, mainB, backupA, backupB } = peaks;
  return { ...first, outcome: { ...first.outcome, peakUncertainty: { leash, mainA, mainB, backupA, backupB } } };
}

/** The same rig under a walker who is a gram heavier: what changes by that is chance. */
export const twinOf = (rig: Rig): Rig => ({ ...rig, walker: { ...rig.walker, mass: rig.walker.mass + 0.001 } });

const peaksDoubtful = ({ peaks }: Recording, other: Recording): boolean =>
  (["leash", "mainA", "mainB", "backupA", "backupB"] as const).some((name) =>
    doubtful(peaks[name].cfc60, other.peaks[name].cfc60),
  );

const NO_ESTIMATE = "The run to compare with failed, so its uncertainty is not known.";
const OTHER_BREAKS =
  "On a second mesh, or under a walker a gram heavier, other parts fail, or in another order: how exact these numbers are is not known.";

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
  // A run that has to be made again begins anew; what is shown never goes back.
  let share = 0;
  while (!step.done) {
    share = Math.max(share, step.value);
    yield { done: from + (to - from) * share, doing };
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
  const missing = noSuchLeg(rig, whatIf);
  if (missing !== undefined) return { outcome: failedOutcome(rig, whatIf, missing) };
  const caught = whatIf.kind !== "leashFall" && whatIf.walker === "caught";
  const needsFall = caught && !catches.has(whatIf.at);
  if (needsFall) {
    const fall = yield* runWith(rig, { kind: "leashFall", at: whatIf.at }, strengths, options, catches);
    if (!fall.outcome.ok) {
      return { outcome: failedOutcome(rig, whatIf, `The fall before it failed. ${fall.outcome.problem}`) };
    }
  }
  const cut = caught ? { cutTime: catches.get(whatIf.at)! } : {};
  let duration = options.duration ?? defaultDuration(rig) + (cut.cutTime ?? 0);
  for (let extension = 0; ; extension++) {
    const result = yield* runRig(rig, whatIf, strengths, { ...cut, duration }, options.accuracy);
    if (!result.ok) return { outcome: failedOutcome(rig, whatIf, result.message) };
    const { recording } = result;
    if (fate(recording) !== "undecided") {
      if (whatIf.kind === "leashFall") catches.set(whatIf.at, recording.peaks.leash.cfc60Time);
      return { outcome: whatIfOutcome(rig, whatIf, recording, strengths), recording };
    }
    if (extension === MOST_EXTENSIONS || options.duration !== undefined) {
      const message = `The walker was still on the way down after ${duration.toFixed(1)} s: the run is too short to judge.`;
      return { outcome: failedOutcome(rig, whatIf, message), recording };
    }
    duration *= LONGER;
  }
}

/**
 * A run in which webbing parts only when its load, as a load cell reports it, exceeds its strength: that is what a strength
 * from a test machine means. (A line that has just failed whips about, and spikes of a millisecond in it, which differ from
 * mesh to mesh, would part it at places that carry little.) So it first runs with webbing that cannot part, and runs
 * again with every line that got more than it holds, until no other does. Everything else parts at once in every run.
 */
function* runRig(
  rig: Rig,
  whatIf: WhatIf,
  strengths: RigStrengths,
  options: { readonly cutTime?: number; readonly duration: number },
  accuracy: Accuracy,
): Generator<number, RunResult, void> {
  let linesThatPart: readonly LineName[] = [];
  for (;;) {
    const result = yield* solve(toProblem(rig, whatIf, strengths.breaking, { ...options, linesThatPart }), accuracy);
    if (!result.ok) return result;
    // When one line has parted, the other may get more than it holds, which it did not before.
    const over = new Set([...linesThatPart, ...overloadedLines(result.recording, strengths)]);
    if (over.size === linesThatPart.length) return result;
    linesThatPart = [...over];
  }
}

/** Step of the second try at a run whose numbers went wrong, as a share of the first one's [-]. */
const AGAIN = 0.5;

/** Runs the engine in slices, once more with half the step when its numbers went wrong; yields the share done. */
function* solve(problem: Problem, accuracy: Accuracy): Generator<number, RunResult, void> {
  const first = yield* solveOnce(problem, { accuracy });
  if (first.ok || (first.reason !== "audit" && first.reason !== "diverged")) return first;
  return yield* solveOnce(problem, { accuracy, stepShare: AGAIN });
}

function* solveOnce(problem: Problem, options: SimulationOptions): Generator<number, RunResult, void> {
  const started = startRun(problem, options);
  if (!started.ok) return started;
  const { run } = started;
  while (run.advance(SLICE) === "running") yield run.progress;
  return resultOf(run);
}
