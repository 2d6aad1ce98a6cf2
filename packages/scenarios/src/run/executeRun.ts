/** Makes one ordered run, in which nothing gives way but what the event says and the tapes. */
import type { Recording, Simulation } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { missingIn, problemPart, type WhatIf } from "../events/registry.ts";
import type { RigStrengths } from "../rigStrengths.ts";
import { drawn } from "../scatter/draw.ts";
import type { BreakingStrengths } from "./breakingStrengths.ts";
import { NEVER, WHOLE } from "./demandStrengths.ts";
import { fate } from "./fate.ts";
import { hangersOf, ofOneHanger } from "./hangers.ts";
import { readRun } from "./readRun.ts";
import type { RunFacts, RunOrder, RunResult, Trouble } from "./runFacts.ts";
import { Settling } from "./settling.ts";
import { solveInSlices } from "./solveInSlices.ts";
import { toProblem } from "./toProblem.ts";

/**
 * A run ends when its walker has settled; if not, after so many times the time that a deep drop and the way back take; and, of a
 * walker who is on the way to a new lowest point then, at the very last after so many times [-].
 */
const LONG = 2.6;
const LONGEST = 4;

/** Strengths of which none is reached, but those of the tapes. */
export function demandStrengths(rig: Rig, { breaking }: RigStrengths): BreakingStrengths {
  const kinds = (rig.backup?.connections ?? []).map((one) => one.kind);
  return {
    main: WHOLE,
    ...(breaking.backup ? { backup: WHOLE } : {}),
    leash: NEVER,
    ring: NEVER,
    connections: breaking.connections.map((strength, i) => (kinds[i] === "tape" ? strength : NEVER)),
    points: { A: breaking.points.A.map(() => NEVER), B: breaking.points.B.map(() => NEVER) },
  };
}

/** Yields the share done. The same order gives the same facts, to the bit. */
export function* executeRun(rig: Rig, strengths: RigStrengths, order: RunOrder): Generator<number, RunResult, void> {
  const missing = missingIn(order.event, rig);
  if (missing) return trouble({ reason: "missing", phrase: missing });
  const at = drawn(rig, order.event, order.draw);
  // Without the ground: a load that it cut short would be no load of that part. Heights above it are told all the same.
  const open = { ...at.rig, ground: [] };
  const solved = yield* runToEnd(open, at.event, demandStrengths(rig, strengths), {
    accuracy: order.accuracy,
    letGo: at.letGo,
    ...(order.before ? { before: order.before } : {}),
  });
  if (!solved.ok) return trouble(solved.trouble);
  return readRun(at.rig, at.event, solved.recording, strengths, {
    ...(order.trace ? { trace: true } : {}),
    ...(order.before ? { before: order.before } : {}),
  });
}

const trouble = (what: Trouble): RunResult => ({ ok: false, trouble: what });

export interface RunToEndOptions {
  readonly accuracy: RunOrder["accuracy"];
  readonly before?: RunFacts;
  readonly duration?: number;
  /** Factor on the time in which the feet let go [-]. */
  readonly letGo?: number;
  readonly linesThatPart?: readonly ("main" | "backup")[];
}

export type SolvedRun =
  | { readonly ok: true; readonly recording: Recording }
  | { readonly ok: false; readonly trouble: Trouble; readonly recording?: Recording };

/** Runs until the walker has settled, or falls with nothing left that holds; with a `duration`, for that long. */
export function* runToEnd(
  rig: Rig,
  event: WhatIf,
  strengths: BreakingStrengths,
  { accuracy, duration, ...options }: RunToEndOptions,
): Generator<number, SolvedRun, void> {
  const usual = toProblem(rig, event, strengths, { ...options, ...(duration === undefined ? {} : { duration }) });
  const problem = duration === undefined ? { ...usual, duration: LONGEST * usual.duration } : usual;
  const fails = usual.cut?.time ?? usual.legFailure?.time ?? 0;
  const times = { from: fails, usual: usual.duration, most: LONG * usual.duration };
  const early = { watch: (run: Simulation) => new Settling(run, times), usually: usual.duration };
  const result = yield* solveInSlices(problem, { accuracy }, duration === undefined ? early : undefined);
  if (!result.ok) return { ok: false, trouble: { reason: result.reason, detail: result.message } };
  const solved = result.recording;
  const recording = ofOneHanger(solved, hangersOf(rig, problemPart(event, rig, options.before).beside).share);
  if (fate(solved) !== "undecided") return { ok: true, recording };
  const detail = `still on the way down after ${solved.duration.toFixed(1)} s`;
  return { ok: false, trouble: { reason: "tooShort", detail }, recording };
}
