/**
 * One what-if as it would go, for the eye: every part gives way at its central strength, and the run goes on. A verdict does not
 * rest on it, for what has given way shows its own strength as its load.
 */
import type { Accuracy } from "@secondline/engine";
import type { Assessed } from "../assessment/assessment.ts";
import { classOf, eventBefore, missingIn, type WhatIf, whatIfKey } from "../events/registry.ts";
import type { RunFacts, Trouble } from "../facts/runFacts.ts";
import { NO_DRAW } from "../scatter/draw.ts";
import { type RigStrengths, rigStrengths } from "../strengths/rigStrengths.ts";
import { overloadedLines } from "./loads.ts";
import { readRun } from "./readRun.ts";
import { runAfterBefore } from "./runAfterBefore.ts";
import { momentOfCatch, type RunToEndOptions, runToEnd, type SolvedRun } from "./runToEnd.ts";
import { untilItGivesWay } from "./untilItGivesWay.ts";
import type { WhatIfOutcome, WhatIfRun } from "./whatIfOutcome.ts";

export interface RunOptions {
  readonly accuracy: Accuracy;
  /** Run again on another mesh, to see how far the peaks depend on it. */
  readonly estimate?: boolean;
  /** Simulated time [s]; default: long enough for the deepest drop. */
  readonly duration?: number;
}

/** Share done, 0 to 1, and the event that is run. */
export interface ShowProgress {
  readonly done: number;
  readonly doing: WhatIf;
}

const otherMesh = (accuracy: Accuracy): Accuracy => (accuracy === "fine" ? "standard" : "fine");

/** Every `next()` does a few milliseconds of work; stop by not calling it again. */
export function runWhatIf(
  { rig, tests }: Assessed,
  whatIf: WhatIf,
  options: RunOptions,
): Generator<ShowProgress, WhatIfRun, void> {
  return showWhatIf(rig, rigStrengths(rig, tests), whatIf, options);
}

/** The same, with strengths that were worked out before. */
export function* showWhatIf(
  rig: Assessed["rig"],
  strengths: RigStrengths,
  whatIf: WhatIf,
  options: RunOptions,
): Generator<ShowProgress, WhatIfRun, void> {
  const share = options.estimate ? 0.3 : 1;
  const first = yield* scaled(showOnce(rig, strengths, whatIf, options), 0, share, whatIf);
  if (!options.estimate || !first.outcome.ok) return first;
  const accuracy = otherMesh(options.accuracy);
  const other = yield* scaled(showOnce(rig, strengths, whatIf, { ...options, accuracy }), share, 1, whatIf);
  return other.outcome.peaks ? { ...first, otherMesh: { accuracy, peaks: other.outcome.peaks } } : first;
}

function* showOnce(
  rig: Assessed["rig"],
  strengths: RigStrengths,
  whatIf: WhatIf,
  { accuracy, duration }: RunOptions,
): Generator<number, WhatIfRun, void> {
  const missing = missingIn(whatIf, rig);
  if (missing) return { outcome: failed(whatIf, { reason: "missing", phrase: missing }) };
  const before = yield* runBefore(rig, strengths, whatIf, accuracy);
  if (before && !before.ok) return { outcome: failed(whatIf, before.trouble) };
  // The share done of what is run before is none of the run's own: it begins at nothing.
  const moment = yield* atNothing(momentOfCatch(rig, whatIf, strengths.breaking, { accuracy }));
  if (!moment.ok) return { outcome: failed(whatIf, moment.trouble) };
  const known = { ...(before ? { before } : {}), ...moment.known };
  const options = { accuracy, ...known, ...(duration === undefined ? {} : { duration }) };
  const solve = (all: RunToEndOptions) => runBreaking(rig, strengths, whatIf, all);
  const solved = yield* untilItGivesWay(rig, whatIf, strengths, options, solve);
  if (!solved.ok) {
    const { recording } = solved;
    return { outcome: failed(whatIf, solved.trouble), ...(recording ? { recording } : {}) };
  }
  const facts = readRun(rig, whatIf, solved.recording, strengths);
  return { outcome: outcomeOf(whatIf, facts), recording: solved.recording };
}

/** The runs of the events that come before, as far back as there are any. */
function* runBefore(
  rig: Assessed["rig"],
  strengths: RigStrengths,
  whatIf: WhatIf,
  accuracy: Accuracy,
): Generator<number, RunFacts | { readonly ok: false; readonly trouble: Trouble } | undefined, void> {
  const event = eventBefore(whatIf);
  if (!event) return undefined;
  const result = yield* atNothing(runAfterBefore(rig, strengths, { event, draw: NO_DRAW, accuracy }));
  return result.ok ? result : { ok: false, trouble: { ...result.trouble, reason: "before" } };
}

/** Work of which no share is told. */
function* atNothing<T>(work: Generator<number, T, void>): Generator<number, T, void> {
  let step = work.next();
  for (; !step.done; step = work.next()) yield 0;
  return step.value;
}

/**
 * A run in which webbing parts only when its load, as a load cell reports it, exceeds its strength: that is what a strength
 * from a test machine means. (A line that has just failed whips about, and spikes of a millisecond in it, which differ from
 * mesh to mesh, would part it at places that carry little.) So it first runs with webbing that cannot part, and runs
 * again with every line that got more than it holds, until no other does. Everything else parts at once in every run.
 */
function* runBreaking(
  rig: Assessed["rig"],
  strengths: RigStrengths,
  whatIf: WhatIf,
  options: RunToEndOptions,
): Generator<number, SolvedRun, void> {
  let linesThatPart: readonly ("main" | "backup")[] = [];
  for (;;) {
    const solved = yield* runToEnd(rig, whatIf, strengths.breaking, { ...options, linesThatPart });
    if (!solved.ok) return solved;
    // When one line has parted, the other may get more than it holds, which it did not before.
    const over = new Set([...linesThatPart, ...overloadedLines(solved.recording, strengths)]);
    if (over.size === linesThatPart.length) return solved;
    linesThatPart = [...over];
  }
}

const failed = (whatIf: WhatIf, trouble: Trouble): WhatIfOutcome => ({
  whatIf,
  key: whatIfKey(whatIf),
  class: classOf(whatIf),
  ok: false,
  trouble,
  caughtBy: "nothing",
  gaveWay: [],
  counts: true,
  runs: 0,
});

function outcomeOf(whatIf: WhatIf, facts: RunFacts): WhatIfOutcome {
  const { peaks, drop, clearance, feetClearance, groundSpeed, caughtBy, lostBecause, gaveWay } = facts;
  return {
    whatIf,
    key: whatIfKey(whatIf),
    class: classOf(whatIf),
    ok: true,
    peaks,
    drop,
    ...(clearance === undefined ? {} : { clearance }),
    ...(feetClearance === undefined ? {} : { feetClearance }),
    ...(groundSpeed === undefined ? {} : { groundSpeed }),
    caughtBy,
    ...(lostBecause === undefined ? {} : { lostBecause }),
    gaveWay,
    counts: true,
    runs: 1,
  };
}

/** Progress of a part of the work, as a stretch of the whole; what is shown never goes back. */
function* scaled<T>(
  work: Generator<number, T, void>,
  from: number,
  to: number,
  doing: WhatIf,
): Generator<ShowProgress, T, void> {
  let step = work.next();
  let share = 0;
  while (!step.done) {
    share = Math.max(share, step.value);
    yield { done: from + (to - from) * share, doing };
    step = work.next();
  }
  return step.value;
}
