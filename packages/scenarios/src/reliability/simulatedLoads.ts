/** Runs one what-if over a spread of the uncertain inputs, with parts that cannot fail, and keeps the loads. */
import type { Accuracy } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { eventBefore, takenAway, type WhatIf } from "../events/registry.ts";
import type { RigStrengths } from "../rigStrengths.ts";
import { demandStrengths, runToEnd } from "../run/executeRun.ts";
import { readRun } from "../run/readRun.ts";
import type { GoodRun, Trouble } from "../run/runFacts.ts";
import { sampleAt, type UncertainInput } from "../scatter/inputs.ts";
import type { StudyProgress } from "../search/study.ts";
import { type LoadedPart, loadsIn } from "./loadedParts.ts";

export interface SpreadRuns {
  readonly points: readonly (readonly number[])[];
  /** Load of every part, one row per run that could be computed [N]. */
  readonly loads: readonly (readonly number[])[];
  /** Runs that could not be computed reliably, with the reasons. */
  readonly failed: readonly string[];
  /** Runs in which nothing catches the walker, whatever the parts hold. */
  readonly lost: number;
  /** Runs in which the walker's feet come down to the ground. */
  readonly ground: number;
}

export interface SpreadRunsOptions {
  readonly rig: Rig;
  readonly whatIf: WhatIf;
  readonly strengths: RigStrengths;
  readonly inputs: readonly UncertainInput[];
  readonly parts: readonly LoadedPart[];
  readonly accuracy: Accuracy;
}

/** What one run gave. */
interface OneRun {
  readonly loads: readonly number[];
  readonly caught: boolean;
  readonly feetClearance?: number;
}

/** Runs every point. `share`: of the whole work, for progress. */
export function* spreadRuns(
  options: SpreadRunsOptions,
  points: readonly (readonly number[])[],
  share: number,
): Generator<StudyProgress, SpreadRuns, void> {
  const done: { readonly point: readonly number[]; readonly run: OneRun }[] = [];
  const failed: string[] = [];
  for (const [r, point] of points.entries()) {
    const [from, to] = [(share * r) / points.length, (share * (r + 1)) / points.length];
    const run = yield* oneRun(options, point, from, to);
    if (typeof run === "string") failed.push(run);
    else done.push({ point, run });
  }
  return {
    points: done.map((one) => one.point),
    loads: done.map((one) => one.run.loads),
    failed,
    lost: done.filter((one) => !one.run.caught).length,
    ground: done.filter(({ run }) => run.feetClearance !== undefined && run.feetClearance <= 0).length,
  };
}

/** Median of every part's load over the runs [N]. */
export function medianLoads({ loads }: SpreadRuns): readonly number[] {
  return loads[0]!.map((_, i) => {
    const sorted = loads.map((row) => row[i]!).sort((a, b) => a - b);
    return (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2;
  });
}

/** One run; the reason when its numbers cannot be trusted. */
export function* oneRun(
  { rig, whatIf, strengths, inputs, parts, accuracy }: SpreadRunsOptions,
  point: readonly number[],
  from: number,
  to: number,
): Generator<StudyProgress, OneRun | string, void> {
  const sample = sampleAt(rig, whatIf, inputs, point);
  const work = runOpen(sample.rig, sample.whatIf, strengths, accuracy);
  let step = work.next();
  // A run that has to be made again begins anew; what is shown never goes back.
  let share = 0;
  for (; !step.done; step = work.next()) {
    share = Math.max(share, step.value);
    yield { done: from + (to - from) * share, doing: whatIf };
  }
  const run = step.value;
  if (!("peaks" in run)) return run.detail ?? run.phrase?.english ?? run.reason;
  const { feetClearance } = run;
  return {
    loads: loadsIn(parts, run, strengths, takenAway(whatIf)),
    caught: run.caughtBy !== "nothing",
    ...(feetClearance === undefined ? {} : { feetClearance }),
  };
}

/** A run without ground, for a load that the ground cut short would be no load of that part; heights are told all the same. */
function* runOpen(
  rig: Rig,
  event: WhatIf,
  strengths: RigStrengths,
  accuracy: Accuracy,
): Generator<number, GoodRun | Trouble, void> {
  const earlier = eventBefore(event);
  const before = earlier && (yield* runOpen(rig, earlier, strengths, accuracy));
  if (before && !("peaks" in before)) return before;
  const options = { accuracy, ...(before ? { before } : {}) };
  const solved = yield* runToEnd({ ...rig, ground: [] }, event, demandStrengths(rig, strengths), options);
  return solved.ok ? readRun(rig, event, solved.recording, strengths, before ? { before } : {}) : solved.trouble;
}
