/** The messages between a pool and its workers. They arrive in the order in which they were sent. */
import type { Progress, ServiceAnswer } from "../service.ts";
import type { KnownRig } from "../tasks/known.ts";
import type { Task, TaskValue } from "../tasks/task.ts";

export type ToWorker =
  /** Once per assessment; tasks name it by its hash. */
  | { readonly kind: "assessed"; readonly hash: string; readonly known: KnownRig }
  | { readonly kind: "task"; readonly id: number; readonly hash: string; readonly task: Task }
  | { readonly kind: "cancel"; readonly id: number };

export type FromWorker =
  | { readonly kind: "progress"; readonly id: number; readonly progress: Progress }
  /** Also after a cancel: from then on the worker is free. `took`: time worked on it [ms]. */
  | { readonly kind: "answer"; readonly id: number; readonly answer: ServiceAnswer<TaskValue>; readonly took: number };

/** Number of assessments that a worker keeps, the oldest dropped first; pool and worker count alike. */
export const ASSESSMENTS_KEPT = 4;

/** The pool's view of a worker. */
export interface PoolWorker {
  post(message: ToWorker): void;
  terminate(): void;
}

export interface WorkerListener {
  heard(message: FromWorker): void;
  /** The worker died, or its message cannot be read. `detail`: the cause, if it is known. */
  lost(detail: string): void;
}

/** Starts a worker; throws when none can be made. */
export type SpawnWorker = (listener: WorkerListener) => PoolWorker;
