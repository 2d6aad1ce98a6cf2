import type { WhatIfOutcome } from "../run/whatIfOutcome.ts";
import type { Outcome } from "./outcome.ts";

/** The what-if that the verdict turns on: that of its gravest reason, else that of the least margin; undefined without any. */
export function worstWhatIf(outcome: Outcome): WhatIfOutcome | undefined {
  const [gravest] = outcome.reasons;
  if (gravest?.kind === "notCaught" || gravest?.kind === "ground" || gravest?.kind === "groundNear") {
    return outcome.whatIfs[gravest.event];
  }
  if (gravest?.kind === "pullTooHard" || gravest?.kind === "pullHard") return outcome.whatIfs[outcome.person!.event];
  const id = gravest?.kind === "partFails" || gravest?.kind === "partThin" ? gravest.part : outcome.leastMargin;
  const part = outcome.parts.find((one) => one.id === id);
  const index = part?.governing && part.byClass[part.governing]?.whatIf;
  return index === undefined ? undefined : outcome.whatIfs[index];
}
