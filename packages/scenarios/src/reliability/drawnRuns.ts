/** The loads in runs of one what-if. Every run draws all inputs that scatter, and no part can fail in it. */
import { takenAway, type WhatIf } from "../events/registry.ts";
import type { RunResult, Trouble } from "../facts/runFacts.ts";
import { median } from "../scatter/median.ts";
import type { DrawSample } from "../scatter/sampler.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import { type LoadedPart, loadsIn } from "./loadedParts.ts";

export interface DrawnRuns {
  /** The deviates of every draw that could be computed. */
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
  readonly whatIf: WhatIf;
  readonly strengths: RigStrengths;
  readonly parts: readonly LoadedPart[];
  readonly samples: readonly DrawSample[];
}

/** `results`: of `samples`, in their order. */
export function drawnRuns(options: DrawnRunsOptions, results: readonly RunResult[]): DrawnRuns {
  const { samples, whatIf, parts, strengths } = options;
  const done = results.flatMap((run, i) => (run.ok ? [{ deviates: samples[i]!.deviates, run }] : []));
  const absent = takenAway(whatIf);
  return {
    deviates: done.map(({ deviates }) => deviates),
    loads: done.map(({ run }) => loadsIn(parts, run, strengths, absent)),
    failed: results.flatMap((run) => (run.ok ? [] : [reasonOf(run.trouble)])),
    lost: done.filter(({ run }) => run.caughtBy === "nothing").length,
    ground: done.filter(({ run }) => run.feetClearance !== undefined && run.feetClearance <= 0).length,
  };
}

const reasonOf = ({ detail, phrase, reason }: Trouble): string => detail ?? phrase?.english ?? reason;

/** Median of every part's load over the draws [N]. */
export function medianLoads(loads: readonly (readonly number[])[]): readonly number[] {
  return loads[0]!.map((_, i) => median(loads.map((row) => row[i]!)));
}
