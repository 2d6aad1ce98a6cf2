/** Runs one what-if in draws of all that scatters, with parts that cannot fail, and keeps the loads. */
import type { Accuracy } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import { takenAway, type WhatIf } from "../events/registry.ts";
import type { RigStrengths } from "../rigStrengths.ts";
import { runAfterBefore } from "../run/runAfterBefore.ts";
import type { RunResult, Trouble } from "../run/runFacts.ts";
import type { Sample } from "../scatter/sampler.ts";
import type { StudyProgress } from "../search/study.ts";
import { type LoadedPart, loadsIn } from "./loadedParts.ts";

export interface DrawnRuns {
  /** Of every draw that could be computed the deviates. */
  readonly deviates: readonly (readonly number[])[];
  /** Load of every part, one row per draw that could be computed [N]. */
  readonly loads: readonly (readonly number[])[];
  /** Draws that could not be computed reliably, with the reasons. */
  readonly failed: readonly string[];
  /** Draws in which nothing catches the walker, whatever the parts hold. */
  readonly lost: number;
  /** Draws in which the walker's feet come down to the ground. */
  readonly ground: number;
}

export interface DrawnRunsOptions {
  readonly rig: Rig;
  readonly whatIf: WhatIf;
  readonly strengths: RigStrengths;
  readonly parts: readonly LoadedPart[];
  readonly samples: readonly Sample[];
  readonly accuracy: Accuracy;
}

/** `share`: of the whole work, for progress. */
export function* drawnRuns(options: DrawnRunsOptions, share: number): Generator<StudyProgress, DrawnRuns, void> {
  const { rig, samples, whatIf, parts, strengths, accuracy } = options;
  const done: { readonly deviates: readonly number[]; readonly run: Extract<RunResult, { ok: true }> }[] = [];
  const failed: string[] = [];
  let told = 0;
  for (const [r, sample] of samples.entries()) {
    const work = runAfterBefore(rig, strengths, { event: whatIf, draw: sample.draw, accuracy });
    let step = work.next();
    for (; !step.done; step = work.next()) {
      // A run that has to be made again begins anew; what is shown never goes back.
      told = Math.max(told, (share * (r + step.value)) / samples.length);
      yield { done: told, doing: whatIf };
    }
    const run = step.value;
    if (run.ok) done.push({ deviates: sample.deviates, run });
    else failed.push(reasonOf(run.trouble));
  }
  const absent = takenAway(whatIf);
  return {
    deviates: done.map(({ deviates }) => deviates),
    loads: done.map(({ run }) => loadsIn(parts, run, strengths, absent)),
    failed,
    lost: done.filter(({ run }) => run.caughtBy === "nothing").length,
    ground: done.filter(({ run }) => run.feetClearance !== undefined && run.feetClearance <= 0).length,
  };
}

const reasonOf = ({ detail, phrase, reason }: Trouble): string => detail ?? phrase?.english ?? reason;

/** Median of every part's load over the draws [N]. */
export function medianLoads(loads: readonly (readonly number[])[]): readonly number[] {
  return loads[0]!.map((_, i) => {
    const sorted = loads.map((row) => row[i]!).sort((a, b) => a - b);
    return (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2;
  });
}
