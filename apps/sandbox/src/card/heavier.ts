/** Looks for heavier walkers with whom the rig holds: the sweep and the whole searches that `heaviestWalker` asks for. Knows no React. */
import type { RunnerService } from "@secondline/runner";
import {
  allSweptRigs,
  type HeaviestWalker,
  heaviestWalker,
  type WalkerAnswer,
  type WalkerQuestion,
  type WalkerStep,
} from "@secondline/scenarios";

export interface HeavierWork {
  /** By which what is computed is cancelled. */
  readonly id: string;
  readonly runner: Pick<RunnerService, "study" | "sweep">;
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
  const { knobs } = question;
  const answer = await runner.sweep({ id, knobs, ...allSweptRigs(question), options }, ({ done }) => onProgress(done));
  if (!answer.ok) return undefined;
  return { kind: "swept", swept: answer.value.kind === "swept" ? answer.value.swept : undefined };
}
