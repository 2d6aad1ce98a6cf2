/** How much work a run is, known before it is made. */
import { type Accuracy, estimateCost } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { eventBefore, type WhatIf } from "../events/registry.ts";
import type { RigStrengths } from "../rigStrengths.ts";
import { demandStrengths } from "./executeRun.ts";
import { toProblem } from "./toProblem.ts";

/** About, with the run that comes before it [element-steps]. */
export function runWork(rig: Rig, strengths: RigStrengths, event: WhatIf, accuracy: Accuracy): number {
  const before = eventBefore(event);
  // What follows on a catch goes on from another fall, and lasts about as long.
  const problem = toProblem(rig, before ?? event, demandStrengths(rig, strengths));
  const { elementSteps } = estimateCost(problem, { accuracy });
  return before ? 2 * elementSteps : elementSteps;
}
