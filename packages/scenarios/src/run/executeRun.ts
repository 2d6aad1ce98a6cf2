/** Makes one ordered run, in which nothing gives way but what the event says and the tapes. */
import type { Rig } from "@secondline/rig";
import { missingIn } from "../events/registry.ts";
import type { RunResult, Trouble } from "../facts/runFacts.ts";
import { drawn } from "../scatter/draw.ts";
import { demandStrengths } from "../strengths/demandStrengths.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { readRun } from "./readRun.ts";
import type { RunOrder } from "./runOrder.ts";
import { momentOfCatch, type RunToEndOptions, runToEnd } from "./runToEnd.ts";
import { untilItGivesWay } from "./untilItGivesWay.ts";

/** Yields the share done. The same order gives the same facts, to the bit. */
export function* executeRun(rig: Rig, strengths: RigStrengths, order: RunOrder): Generator<number, RunResult, void> {
  const missing = missingIn(order.event, rig);
  if (missing) return trouble({ reason: "missing", phrase: missing });
  const at = drawn(rig, order.event, order.draw);
  // The run leaves the ground out: a load that the ground cuts short is not the load of the part. Heights above the ground are told anyway.
  const open = { ...at.rig, ground: [] };
  const holds = demandStrengths(rig, strengths);
  const { accuracy, before } = order;
  const options = { accuracy, shapes: false, letGo: at.letGo, ...(before ? { before } : {}) };
  const moment = yield* shared(momentOfCatch(open, at.event, holds, options), 0, FALL_SHARE);
  if (!moment.ok) return trouble(moment.trouble);
  const from = moment.known.catchTime === undefined ? 0 : FALL_SHARE;
  const solve = (known: RunToEndOptions) => runToEnd(open, at.event, holds, known);
  const whole = untilItGivesWay(open, at.event, strengths, { ...options, ...moment.known }, solve);
  const solved = yield* shared(whole, from, 1);
  if (!solved.ok) return trouble(solved.trouble);
  return readRun(at.rig, at.event, solved.recording, strengths, order.trace ? { trace: true } : {});
}

const trouble = (what: Trouble): RunResult => ({ ok: false, trouble: what });

/** About the share of the work that the fall up to its catch takes; the run to the end takes the rest [-]. */
const FALL_SHARE = 0.1;

/** Work whose shares done count from one share of a whole to another. */
function* shared<T>(work: Generator<number, T, void>, from: number, to: number): Generator<number, T, void> {
  let step = work.next();
  for (; !step.done; step = work.next()) yield from + (to - from) * step.value;
  return step.value;
}
