/** Runs what-ifs and studies to their end, for tests. */
import {
  type Outcome,
  type Rig,
  type RunOptions,
  runWhatIf,
  type StudyOptions,
  study,
  type WhatIf,
  type WhatIfRun,
} from "@secondline/scenarios";

function finish<T>(work: Generator<unknown, T, void>): T {
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

export const runOf = (rig: Rig, whatIf: WhatIf, options: RunOptions = { accuracy: "standard" }): WhatIfRun =>
  finish(runWhatIf(rig, whatIf, options));

export const studyOf = (rig: Rig, options: StudyOptions): Outcome => finish(study(rig, options));

/** Outcome of one what-if that must have been computed. */
export function outcomeOf(rig: Rig, whatIf: WhatIf, options?: RunOptions) {
  const { outcome, recording } = runOf(rig, whatIf, options);
  if (!outcome.ok || !recording || !outcome.peaks) throw new Error(`${outcome.title}: ${outcome.problem}`);
  return { ...outcome, peaks: outcome.peaks, drop: outcome.drop!, recording };
}
