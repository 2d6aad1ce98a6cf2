/** A run, and before it the runs of all earlier events of the same fall. */
import type { Rig } from "@secondline/rig";
import { eventBefore } from "../events/registry.ts";
import type { RunResult } from "../facts/runFacts.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { executeRun } from "./executeRun.ts";
import type { RunOrder } from "./runOrder.ts";

/** Yields the share done of the run that is being made. What failed before is handed back in place of the run. */
export function* runAfterBefore(
  rig: Rig,
  strengths: RigStrengths,
  order: Pick<RunOrder, "event" | "draw" | "accuracy">,
): Generator<number, RunResult, void> {
  const event = eventBefore(order.event);
  const before = event && (yield* runAfterBefore(rig, strengths, { ...order, event }));
  if (before && !before.ok) return before;
  return yield* executeRun(rig, strengths, { ...order, ...(before ? { before } : {}) });
}
