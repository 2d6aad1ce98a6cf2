/** The tasks of a thread, and the work behind each. */
import {
  executeRun,
  type RunOptions,
  type RunOrder,
  type RunResult,
  type StudyProgress,
  showWhatIf,
  type WhatIf,
  type WhatIfRun,
} from "@secondline/scenarios";
import type { KnownRig } from "./known.ts";

export interface Tasks {
  /** One run that a search ordered. */
  readonly order: { readonly kind: "order"; readonly order: RunOrder };
  /** One what-if for the eye. */
  readonly show: { readonly kind: "show"; readonly whatIf: WhatIf; readonly options: RunOptions };
}
export interface TaskValues {
  readonly order: RunResult;
  readonly show: WhatIfRun;
}
export type TaskKind = keyof Tasks;
export type Task = Tasks[TaskKind];
export type TaskValue = TaskValues[TaskKind];

/** Work in slices of some milliseconds; stop by not calling `next()` again. */
export type Work<T> = Generator<StudyProgress, T, void>;

export function startTask(known: KnownRig, task: Task): Work<TaskValue> {
  switch (task.kind) {
    case "order":
      return ordered(known, task.order);
    case "show":
      return showWhatIf(known.rig, known.strengths, task.whatIf, task.options);
  }
}

/** Adds an entry, and drops the oldest one if there are too many. */
export function keepFew<K, V>(map: Map<K, V>, key: K, value: V, most: number): void {
  map.set(key, value);
  if (map.size > most) map.delete(map.keys().next().value as K);
}

function* ordered({ rig, strengths }: KnownRig, order: RunOrder): Work<RunResult> {
  const work = executeRun(rig, strengths, order);
  let step = work.next();
  for (; !step.done; step = work.next()) yield { done: step.value, doing: order.event };
  return step.value;
}
