/** The what-ifs whose chances can be worked out, and the what-if that is chosen at first. */
import { type Assessed, noChances, type Outcome, type WhatIfOutcome, worstWhatIf } from "@secondline/scenarios";

export interface ChanceChoices {
  /** What-ifs to choose from. */
  readonly open: readonly WhatIfOutcome[];
  /** The what-if that is asked about, else the worst, else the first; if no chances can be worked out, any what-if. */
  readonly chosen: WhatIfOutcome;
}

/** `asked`: key of a what-if. */
export function chanceChoices(assessed: Assessed, outcome: Outcome, asked: string | undefined): ChanceChoices {
  const all = outcome.whatIfs;
  const open = all.filter(({ whatIf }) => noChances(assessed, whatIf) === undefined);
  const keyed = (key: string | undefined) => open.find((one) => one.key === key);
  return { open, chosen: keyed(asked) ?? keyed(worstWhatIf(outcome)?.key) ?? open[0] ?? all[0]! };
}
