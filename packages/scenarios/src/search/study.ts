/** A whole search in the thread it is called from, in slices. */
import type { Assessed } from "../assessment/assessment.ts";
import type { WhatIf } from "../events/registry.ts";
import type { Outcome } from "../facts/outcome.ts";
import { rigStrengths } from "../rigStrengths.ts";
import { executeRun } from "../run/executeRun.ts";
import type { RunResult } from "../run/runFacts.ts";
import { likelyFirst } from "./likelyFirst.ts";
import { type Found, type SearchOptions, search } from "./search.ts";

export interface StudyProgress {
  /** Share done, 0 to 1; never goes back [-]. */
  readonly done: number;
  /** The event that is being run. */
  readonly doing?: WhatIf;
  /** What else is being done, in place of an event. */
  readonly step?: string;
  readonly made?: number;
  /** How many runs there will be, about; only of a sweep. */
  readonly expected?: number;
  /** How many what-ifs the whole set has. */
  readonly of?: number;
  /** What is known so far: never that the rig holds. */
  readonly soFar?: Outcome;
}

/** Every `next()` does a few milliseconds of work; stop by not calling it again. */
export function* study(assessed: Assessed, options: SearchOptions): Generator<StudyProgress, Found, void> {
  const strengths = rigStrengths(assessed.rig, assessed.tests);
  const work = search(assessed, options, likelyFirst);
  let done = 0;
  let step = work.next();
  while (!step.done) {
    const { orders, made, expected, of, soFar } = step.value;
    if (soFar && options.tellSoFar) yield { done, made, of, soFar: soFar() };
    const results: RunResult[] = [];
    for (const [i, order] of orders.entries()) {
      const run = executeRun(assessed.rig, strengths, order);
      let slice = run.next();
      while (!slice.done) {
        done = Math.max(done, Math.min(1, (made + i + slice.value) / expected));
        yield { done, doing: order.event, made: made + i, of };
        slice = run.next();
      }
      results.push(slice.value);
    }
    step = work.next(results);
  }
  return step.value;
}
