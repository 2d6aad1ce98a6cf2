/** What a thread can be asked to do, and the work behind it. */
import {
  type Assessed,
  executeRun,
  type RigStrengths,
  type RunOptions,
  type RunOrder,
  type RunResult,
  rigStrengths,
  runWhatIf,
  type StudyProgress,
  type WhatIf,
  type WhatIfRun,
} from "@secondline/scenarios";

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

/** Rigs of which the strengths are kept: the one that is edited, and the layouts beside it. */
const KEPT = 4;

/** Break tests from which on their strengths take as long as a run. */
const LONG_LOG = 500;

export const isLong = ({ tests }: Assessed): boolean => tests.length >= LONG_LOG;

/** Starts tasks; works a rig's strengths out once. */
export class TaskStarter {
  readonly #strengths = new Map<string, RigStrengths>();

  /** Works out beforehand what a task needs, where that takes longer than the task may wait: a long break log. */
  prepare(assessed: Assessed): void {
    if (isLong(assessed)) this.#strengthsOf(assessed);
  }

  async start(assessed: Assessed, task: Task): Promise<Work<TaskValue>> {
    switch (task.kind) {
      case "order":
        return ordered(assessed, this.#strengthsOf(assessed), task.order);
      case "show":
        return runWhatIf(assessed, task.whatIf, task.options);
    }
  }

  #strengthsOf({ rig, tests, hash }: Assessed): RigStrengths {
    const known = this.#strengths.get(hash);
    if (known) return known;
    const strengths = rigStrengths(rig, tests);
    keepFew(this.#strengths, hash, strengths, KEPT);
    return strengths;
  }
}

/** Adds an entry, and lets go of the one added first when there are too many. */
export function keepFew<K, V>(map: Map<K, V>, key: K, value: V, most: number): void {
  map.set(key, value);
  if (map.size > most) map.delete(map.keys().next().value as K);
}

function* ordered({ rig }: Assessed, strengths: RigStrengths, order: RunOrder): Work<RunResult> {
  const work = executeRun(rig, strengths, order);
  let step = work.next();
  for (; !step.done; step = work.next()) yield { done: step.value, doing: order.event };
  return step.value;
}
