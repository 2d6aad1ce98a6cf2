/** Runs a fall until it is over, or as far as its catch. */
import type { Accuracy, Problem, Recording, Simulation, SimulationOptions, SimulationResult } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { KnownBefore } from "../events/eventKind.ts";
import { fallBefore, problemPart, type WhatIf } from "../events/registry.ts";
import type { Trouble } from "../facts/runFacts.ts";
import type { BreakingStrengths } from "../strengths/breakingStrengths.ts";
import { demandStrengths } from "../strengths/demandStrengths.ts";
import { CatchWatch } from "./catch.ts";
import { fate } from "./fate.ts";
import { hangersOf, ofOneHanger } from "./hangers.ts";
import { Settling, type SettlingTimes } from "./settling.ts";
import { solveInSlices, type Watch } from "./solveInSlices.ts";
import { type ProblemOptions, toProblem } from "./toProblem.ts";

/**
 * Over the time that a deep drop and the way back take [-]. A run ends when its walker has settled; if not, at the first; and, where
 * the walker is on the way to a new lowest point then, at the second.
 */
const LATEST_SETTLED_RATIO = 4;
const LATEST_END_RATIO = 5;

export interface RunToEndOptions extends ProblemOptions {
  readonly accuracy: Accuracy;
  /** Whether the recording shows the lines' shapes, for the eye; it does by default. */
  readonly shapes?: boolean;
}

export type SolvedRun =
  | { readonly ok: true; readonly recording: Recording }
  | { readonly ok: false; readonly trouble: Trouble; readonly recording?: Recording };

/** Runs until the walker has settled, or falls with nothing left that holds; with a `duration`, for that long. */
export function* runToEnd(
  rig: Rig,
  event: WhatIf,
  strengths: BreakingStrengths,
  options: RunToEndOptions,
): Generator<number, SolvedRun, void> {
  const problem = toProblem(rig, event, strengths, options);
  const { accuracy, shapes = true } = options;
  const result =
    options.duration === undefined
      ? yield* solveUntil(problem, { accuracy, shapes }, Settling)
      : yield* solveInSlices(problem, { accuracy, shapes });
  if (!result.ok) return { ok: false, trouble: { reason: result.reason, detail: result.message } };
  const solved = result.recording;
  const recording = ofOneHanger(solved, hangersOf(rig, problemPart(event, rig, options).beside).share);
  if (fate(solved) !== "undecided") return { ok: true, recording };
  const detail = `still on the way down after ${solved.duration.toFixed(1)} s`;
  return { ok: false, trouble: { reason: "tooShort", detail }, recording };
}

/** `known`: when the leash pulls hardest as it catches the walker; empty where an event is none in a catch. */
export type MomentOfCatch =
  | { readonly ok: true; readonly known: Pick<KnownBefore, "catchTime"> }
  | { readonly ok: false; readonly trouble: Trouble };

/**
 * When something fails that fails in a catch: as the leash pulls hardest in the same fall with nothing failing. That fall is run as far
 * as its catch only, for what comes after is the run in which something fails.
 */
export function* momentOfCatch(
  rig: Rig,
  event: WhatIf,
  breaking: BreakingStrengths,
  { accuracy, letGo }: Pick<RunToEndOptions, "accuracy" | "letGo">,
): Generator<number, MomentOfCatch, void> {
  const fall = fallBefore(event);
  if (!fall) return { ok: true, known: {} };
  const open = { ...rig, ground: [] };
  const options = letGo === undefined ? {} : { letGo };
  const problem = toProblem(open, fall, demandStrengths(open, { breaking }), options);
  const result = yield* solveUntil(problem, { accuracy, shapes: false }, CatchWatch);
  if (result.ok) return { ok: true, known: { catchTime: result.recording.peaks.leash.cfc60Time } };
  return { ok: false, trouble: { reason: "before", detail: result.message } };
}

function solveUntil(
  usual: Problem,
  options: SimulationOptions,
  Watching: new (run: Simulation, times: SettlingTimes) => Watch,
): Generator<number, SimulationResult, void> {
  const times = {
    from: usual.cut?.time ?? usual.legFailure?.time ?? 0,
    usual: usual.duration,
    most: LATEST_SETTLED_RATIO * usual.duration,
  };
  const problem = { ...usual, duration: LATEST_END_RATIO * usual.duration };
  const early = { watch: (run: Simulation) => new Watching(run, times), usually: usual.duration };
  return solveInSlices(problem, options, early);
}
