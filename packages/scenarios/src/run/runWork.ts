/** How much work a run is, known before it is made. */
import { type Accuracy, estimateCost } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { eventBefore, fallBefore, type WhatIf } from "../events/registry.ts";
import { demandStrengths } from "../strengths/demandStrengths.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { toProblem } from "./toProblem.ts";

/** About, with what is run before it [element-steps]. */
export function runWork(rig: Rig, strengths: RigStrengths, event: WhatIf, accuracy: Accuracy): number {
  const before = eventBefore(event);
  const fall = fallBefore(event);
  const problem = toProblem(rig, fall ?? before ?? event, demandStrengths(rig, strengths));
  const { elementSteps } = estimateCost(problem, { accuracy });
  // What follows on another event lasts about as long again. So does what fails in a catch: the fall goes no further than its catch, but
  // the mesh of what comes after is finer.
  return elementSteps * (1 + (before ? 1 : 0) + (fall ? 1 : 0));
}
