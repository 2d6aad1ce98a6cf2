/** Drives work to its end; the event loop runs between slices. */
import { CANCELLED, failureOf } from "../failure.ts";
import type { Progress, ServiceAnswer } from "../service.ts";
import { nextTask } from "./nextTask.ts";
import type { Work } from "./task.ts";

/** How long a slice may hold the thread [ms]: short enough for a cancel to feel immediate. */
const SLICE_MS = 25;

interface SliceOptions {
  readonly signal: Pick<AbortSignal, "aborted">;
  readonly onProgress: (progress: Progress) => void;
}

export async function inSlices<T>(
  start: () => Work<T> | Promise<Work<T>>,
  { signal, onProgress }: SliceOptions,
): Promise<ServiceAnswer<T>> {
  try {
    // Before any work: a request that is cancelled at once (a slider being dragged) costs nothing.
    await nextTask();
    if (signal.aborted) return CANCELLED;
    const work = await start();
    while (!signal.aborted) {
      const step = slice(work);
      if (step.done) return { ok: true, value: step.value };
      onProgress(step.value);
      await nextTask();
    }
    return CANCELLED;
  } catch (error) {
    return failureOf(error);
  }
}

function slice<T>(work: Work<T>): IteratorResult<Progress, T> {
  const end = performance.now() + SLICE_MS;
  let step = work.next();
  while (!step.done && performance.now() < end) step = work.next();
  return step;
}
