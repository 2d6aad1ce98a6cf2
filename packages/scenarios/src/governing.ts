import type { Outcome, WhatIf } from "./outcome.ts";

/** The what-if in which the part that fails first has its least margin. */
export function governingWhatIf({ parts, firstToFail, whatIfs }: Outcome): WhatIf {
  const first = parts.find(({ id }) => id === firstToFail)!;
  return whatIfs[first.whatIf]!.whatIf;
}
