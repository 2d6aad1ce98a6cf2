/** A whole search in the thread it is called from, in slices. */
import type { Assessed } from "../assessment/assessment.ts";
import type { RunResult } from "../facts/runFacts.ts";
import type { StudyProgress } from "../outcome/studyProgress.ts";
import { likelyFirst } from "../reliability/likelyFirst.ts";
import { executeRun } from "../run/executeRun.ts";
import { rigStrengths } from "../strengths/rigStrengths.ts";
import { type SearchOptions, type SearchResult, search } from "./search.ts";

/** Every `next()` does a few milliseconds of work; stop by not calling it again. */
export function* study(assessed: Assessed, options: SearchOptions): Generator<StudyProgress, SearchResult, void> {
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
