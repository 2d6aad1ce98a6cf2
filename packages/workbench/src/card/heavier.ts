/** Looks for heavier walkers with whom the rig holds: the sweep and the whole searches that `heaviestWalker` asks for. */
import type { RunnerService, ServiceAnswer } from "@secondline/runner";
import {
  allSweptRigs,
  type HeaviestFound,
  heaviestWalker,
  type WalkerAnswer,
  type WalkerQuestion,
  type WalkerStep,
} from "@secondline/scenarios";
import type { TaskAnswer } from "../job/job.ts";

export interface HeavierWork {
  /** The id by which the computation can be cancelled. */
  readonly id: string;
  readonly runner: Pick<RunnerService, "study" | "sweep">;
  /** Share done of the current step, and the number of the step, counted from 1. */
  readonly onProgress: (done: number, step: number) => void;
}

export async function lookForHeavier(question: WalkerQuestion, work: HeavierWork): Promise<TaskAnswer<HeaviestFound>> {
  const steps = heaviestWalker(question);
  let step = steps.next();
  for (let number = 1; !step.done; number++) {
    const onProgress = (done: number) => work.onProgress(done, number);
    const answer =
      step.value.kind === "sweep"
        ? await swept(step.value, work, onProgress)
        : await found(step.value, work, onProgress);
    if (!answer.ok) return answer;
    step = steps.next(answer.value);
  }
  return { ok: true, value: step.value };
}

async function found(
  { assessed, options }: Extract<WalkerStep, { kind: "search" }>,
  { id, runner }: HeavierWork,
  onProgress: (done: number) => void,
): Promise<ServiceAnswer<WalkerAnswer>> {
  const answer = await runner.study({ id, assessed, ...options }, ({ done }) => onProgress(done));
  return answer.ok ? { ok: true, value: { kind: "found", found: answer.value } } : answer;
}

async function swept(
  { question, options }: Extract<WalkerStep, { kind: "sweep" }>,
  { id, runner }: HeavierWork,
  onProgress: (done: number) => void,
): Promise<ServiceAnswer<WalkerAnswer>> {
  const { knobs } = question;
  const answer = await runner.sweep({ id, knobs, ...allSweptRigs(question), options }, ({ done }) => onProgress(done));
  if (!answer.ok) return answer;
  const swept = answer.value.kind === "swept" ? answer.value.swept : undefined;
  return { ok: true, value: { kind: "swept", swept } };
}
