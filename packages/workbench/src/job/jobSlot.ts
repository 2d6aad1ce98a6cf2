import type { Job, StoppableTask, TaskAnswer } from "./job.ts";

/** A place for one job at a time. A task that begins ends the one before it; whatever an ended task still says is dropped. */
export class JobSlot<T, P = undefined> {
  readonly #put: (job: Job<T, P>) => void;
  #task: StoppableTask<T, P> | undefined;

  /** `put` is handed every new state of the job; whoever shows it keeps it. */
  constructor(put: (job: Job<T, P>) => void) {
    this.#put = put;
  }

  get isBusy(): boolean {
    return this.#task !== undefined;
  }

  /** Runs a task to its end. Gives its value; undefined when it was stopped, replaced, or failed. */
  async run(task: StoppableTask<T, P>): Promise<T | undefined> {
    this.#end();
    this.#task = task;
    const goesOn = () => this.#task === task;
    this.#put({ kind: "busy", progress: task.begun });
    const tell = (progress: P) => {
      if (goesOn()) this.#put({ kind: "busy", progress });
    };
    const answer = await answerOf(task, tell, goesOn);
    if (!goesOn()) return undefined;
    this.#task = undefined;
    if (answer.ok) this.#put({ kind: "done", value: answer.value });
    else this.#put(answer.reason === "cancelled" ? { kind: "stopped" } : { kind: "failed", message: answer.message });
    return answer.ok ? answer.value : undefined;
  }

  /** Ends what computes; does nothing when nothing does. */
  stop(): void {
    if (this.isBusy) this.rest("stopped");
  }

  /** Ends what computes, if anything does, and says how the job rests. */
  rest(kind: "idle" | "waiting" | "stopped"): void {
    this.#end();
    this.#put({ kind });
  }

  #end(): void {
    const task = this.#task;
    this.#task = undefined;
    task?.cancel();
  }
}

/** A task that throws has failed: nobody waits for it for ever. */
async function answerOf<T, P>(
  task: StoppableTask<T, P>,
  tell: (progress: P) => void,
  goesOn: () => boolean,
): Promise<TaskAnswer<T>> {
  try {
    return await task.run(tell, goesOn);
  } catch (error) {
    return { ok: false, reason: "failed", message: error instanceof Error ? error.message : String(error) };
  }
}
