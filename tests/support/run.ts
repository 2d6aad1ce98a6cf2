/** Runs what-ifs and studies to their end, for tests. */
import {
  type Assessed,
  assess,
  assessRig,
  type Outcome,
  type PartJudgement,
  type Rig,
  type RunOptions,
  runWhatIf,
  type SearchOptions,
  type SearchResult,
  study,
  type WhatIf,
  type WhatIfRun,
} from "@secondline/scenarios";

function finish<T>(work: Generator<unknown, T, void>): T {
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

export function judged(rig: Rig, judgements: readonly PartJudgement[]): Assessed {
  const reading = assess({ rig, judgements });
  if (!reading.ok) throw new Error(reading.issues.map((issue) => issue.message).join(" "));
  return reading.assessed;
}

export const runOf = (assessed: Assessed, whatIf: WhatIf, options: RunOptions = { accuracy: "standard" }): WhatIfRun =>
  finish(runWhatIf(assessed, whatIf, options));

export const foundOf = (assessed: Assessed, options: SearchOptions): SearchResult => finish(study(assessed, options));
export const studyOf = (rig: Rig, options: SearchOptions): Outcome => foundOf(assessRig(rig), options).outcome;

/** Outcome of one what-if that must have been computed, in a run in which parts give way. */
export function outcomeOf(rig: Rig, whatIf: WhatIf, options?: RunOptions) {
  const { outcome, recording } = runOf(assessRig(rig), whatIf, options);
  if (!outcome.ok || !recording || !outcome.peaks)
    throw new Error(`${outcome.key}: ${JSON.stringify(outcome.trouble)}`);
  return { ...outcome, peaks: outcome.peaks, drop: outcome.drop!, recording };
}
