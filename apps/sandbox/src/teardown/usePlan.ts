/** Asks a thread whenever what an answer rests on changes. */
import type { TeardownLearnt, TeardownReading } from "@secondline/strength";
import type { Job, LearntInput, PlanInput, Planner } from "@secondline/workbench";
import { type Remote, wrap } from "comlink";
import { useEffect } from "react";
import { useJob } from "../state/useJob.ts";

export const usePlan = (input: PlanInput) => useThread(input, askForPlan);
export const useLearnt = (input: LearntInput) => useThread(input, askForLearnt);

const askForPlan = (planner: Remote<Planner>, input: PlanInput): Promise<TeardownReading> => planner.plan(input);
const askForLearnt = (planner: Remote<Planner>, input: LearntInput): Promise<TeardownLearnt> => planner.learnt(input);

function useThread<I, T>(input: I, ask: (planner: Remote<Planner>, input: I) => Promise<T>): Job<T> {
  const { job, slot } = useJob<T>();
  useEffect(() => {
    // A thread of its own for each question: one that is no longer asked is ended, however long it would have taken.
    const worker = new Worker(new URL("./teardown.worker.ts", import.meta.url), { type: "module" });
    const end = () => worker.terminate();
    const death = new Promise<never>((_, reject) => {
      worker.addEventListener("error", ({ message }) => reject(new Error(message)));
    });
    const run = async () => {
      try {
        return { ok: true, value: await Promise.race([ask(wrap<Planner>(worker), input), death]) } as const;
      } finally {
        end();
      }
    };
    void slot.run({ begun: undefined, run, cancel: end });
  }, [input, ask, slot]);
  return job;
}
