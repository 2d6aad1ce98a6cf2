/** The runner in the thread it is called from: works in slices and lets the event loop breathe between them. */
import { runWhatIf, study } from "@secondline/scenarios";
import { nextTask } from "./nextTask.ts";
import type {
  Answer,
  ChancesRequest,
  ChancesService,
  Progress,
  RunnerService,
  RunRequest,
  StudyRequest,
} from "./service.ts";

/** How long a slice may hold the thread [ms]: short enough for a cancel to feel immediate. */
const SLICE_MS = 25;

export class InProcessRunner implements RunnerService, ChancesService {
  readonly #running = new Map<string, { cancelled: boolean }>();

  run(request: RunRequest, onProgress?: (progress: Progress) => void) {
    const { id, assessed, whatIf, ...options } = request;
    return this.#drive(id, () => runWhatIf(assessed, whatIf, options), onProgress);
  }

  study(request: StudyRequest, onProgress?: (progress: Progress) => void) {
    const { id, assessed, ...options } = request;
    return this.#drive(id, () => study(assessed, options), onProgress);
  }

  chances(request: ChancesRequest, onProgress?: (progress: Progress) => void) {
    const { id, assessed, ...options } = request;
    // Few ask for it, and it is a sixth of the thread's code: it comes when asked for.
    const start = async () => (await import("@secondline/scenarios/chances")).chances(assessed, options);
    return this.#drive(id, start, onProgress);
  }

  async cancel(id: string): Promise<void> {
    this.#stop(id);
  }

  #stop(id: string): void {
    const state = this.#running.get(id);
    if (state) state.cancelled = true;
  }

  /** Drives a computation to its end. A second request under the same id takes the place of the first. */
  async #drive<T>(
    id: string,
    start: () => Generator<Progress, T, void> | Promise<Generator<Progress, T, void>>,
    onProgress: ((progress: Progress) => void) | undefined,
  ): Promise<Answer<T>> {
    this.#stop(id);
    const state = { cancelled: false };
    this.#running.set(id, state);
    try {
      // Before any work: a request that is cancelled at once (a slider being dragged) costs nothing.
      await nextTask();
      const work = await start();
      while (!state.cancelled) {
        const step = slice(work);
        if (step.done) return { ok: true, value: step.value };
        onProgress?.(step.value);
        await nextTask();
      }
      return CANCELLED;
    } catch (error) {
      return { ok: false, reason: "failed", message: error instanceof Error ? error.message : String(error) };
    } finally {
      if (this.#running.get(id) === state) this.#running.delete(id);
    }
  }
}

export const CANCELLED = { ok: false, reason: "cancelled", message: "Cancelled." } as const;

function slice<T>(work: Generator<Progress, T, void>): IteratorResult<Progress, T> {
  const end = performance.now() + SLICE_MS;
  let step = work.next();
  while (!step.done && performance.now() < end) step = work.next();
  return step;
}
