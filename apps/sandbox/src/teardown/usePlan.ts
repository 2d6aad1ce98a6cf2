/** Asks a thread whenever what an answer rests on changes; late answers to older questions are dropped. */
import type { TeardownLearnt, TeardownReading } from "@secondline/strength";
import { type Remote, wrap } from "comlink";
import { useEffect, useState } from "react";
import type { LearntInput, PlanInput, Planner } from "./planner.ts";

export type Answer<T> =
  | { readonly kind: "busy" }
  | { readonly kind: "done"; readonly reading: T }
  | { readonly kind: "failed"; readonly message: string };

export const usePlan = (input: PlanInput) => useThread(input, askForPlan);
export const useLearnt = (input: LearntInput) => useThread(input, askForLearnt);

const askForPlan = (planner: Remote<Planner>, input: PlanInput): Promise<TeardownReading> => planner.plan(input);
const askForLearnt = (planner: Remote<Planner>, input: LearntInput): Promise<TeardownLearnt> => planner.learnt(input);

function useThread<I, T>(input: I, ask: (planner: Remote<Planner>, input: I) => Promise<T>): Answer<T> {
  const [answer, setAnswer] = useState<Answer<T>>({ kind: "busy" });
  useEffect(() => {
    setAnswer({ kind: "busy" });
    // A thread of its own for each question: one that is no longer asked is ended, however long it would have taken.
    const worker = new Worker(new URL("./teardown.worker.ts", import.meta.url), { type: "module" });
    let stale = false;
    const fail = (message: string) => !stale && setAnswer({ kind: "failed", message });
    worker.addEventListener("error", (event) => fail(event.message));
    ask(wrap<Planner>(worker), input).then(
      (reading) => !stale && setAnswer({ kind: "done", reading }),
      (error: unknown) => fail(error instanceof Error ? error.message : String(error)),
    );
    return () => {
      stale = true;
      worker.terminate();
    };
  }, [input, ask]);
  return answer;
}
