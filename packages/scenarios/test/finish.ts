/** Drives a computation to its end; every progress it reported goes to `seen`. */
import type { StudyProgress } from "../src/index.ts";

export function finish<T>(work: Generator<StudyProgress, T, void>, seen: StudyProgress[] = []): T {
  let step = work.next();
  while (!step.done) {
    seen.push(step.value);
    step = work.next();
  }
  return step.value;
}
