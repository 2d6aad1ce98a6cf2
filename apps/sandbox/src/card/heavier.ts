/** Looks for heavier walkers with whom the rig holds: the sweep and the whole searches that `heaviestWalker` asks for. Knows no React. */
import type { OrdersService, RunnerService } from "@secondline/runner";
import {
  type HeaviestWalker,
  heaviestWalker,
  NothingSwept,
  sweep,
  sweepPoints,
  type WalkerAnswer,
  type WalkerQuestion,
  type WalkerStep,
} from "@secondline/scenarios";

export interface HeavierWork {
  /** By which what is computed is cancelled. */
  readonly id: string;
  readonly runner: Pick<RunnerService, "study"> & Pick<OrdersService, "orders">;
  /** Share done of the step that is made, and which of them it is, counted from 1. */
  readonly onProgress: (done: number, step: number) => void;
}

/** Undefined: it was stopped, or could not be computed. */
export async function lookForHeavier(question: WalkerQuestion, work: HeavierWork): Promise<HeaviestWalker | undefined> {
  const steps = heaviestWalker(question);
  let step = steps.next();
  for (let number = 1; !step.done; number++) {
    const onProgress = (done: number) => work.onProgress(done, number);
    const answer =
      step.value.kind === "sweep"
        ? await swept(step.value, work, onProgress)
        : await found(step.value, work, onProgress);
    if (!answer) return undefined;
    step = steps.next(answer);
  }
  return step.value;
}

async function found(
  { assessed, options }: Extract<WalkerStep, { kind: "search" }>,
  { id, runner }: HeavierWork,
  onProgress: (done: number) => void,
): Promise<WalkerAnswer | undefined> {
  const answer = await runner.study({ id, assessed, ...options }, ({ done }) => onProgress(done));
  return answer.ok ? { kind: "found", found: answer.value } : undefined;
}

async function swept(
  { question, options }: Extract<WalkerStep, { kind: "sweep" }>,
  { id, runner }: HeavierWork,
  onProgress: (done: number) => void,
): Promise<WalkerAnswer | undefined> {
  const points = sweepPoints(question);
  if (points.points.length < 2) return { kind: "swept", swept: undefined };
  try {
    const rounds = sweep(points, question.knobs, options);
    let step = rounds.next();
    while (!step.done) {
      const { orders, made, expected } = step.value;
      const answer = await runner.orders({ id, orders }, ({ made: now = 0 }) =>
        onProgress(Math.min(1, (made + now) / expected)),
      );
      if (!answer.ok) return undefined;
      step = rounds.next(answer.value);
    }
    return { kind: "swept", swept: step.value };
  } catch (error) {
    if (error instanceof NothingSwept) return { kind: "swept", swept: undefined };
    throw error;
  }
}
