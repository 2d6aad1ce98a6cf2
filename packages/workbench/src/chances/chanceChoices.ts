/** Which what-ifs chances can be worked out of, and of which one they are at first. */
import { type Assessed, noChances, type Outcome, type WhatIfOutcome, worstWhatIf } from "@secondline/scenarios";

export interface ChanceChoices {
  /** What-ifs to choose from. */
  readonly open: readonly WhatIfOutcome[];
  /** The one that is asked about, else the worst, else the first; where none can be, any of them. */
  readonly chosen: WhatIfOutcome;
}

/** `asked`: key of a what-if. */
export function chanceChoices(assessed: Assessed, outcome: Outcome, asked: string | undefined): ChanceChoices {
  const all = outcome.whatIfs;
  const open = all.filter(({ whatIf }) => noChances(assessed, whatIf) === undefined);
  const keyed = (key: string | undefined) => open.find((one) => one.key === key);
  return { open, chosen: keyed(asked) ?? keyed(worstWhatIf(outcome)?.key) ?? open[0] ?? all[0]! };
}
