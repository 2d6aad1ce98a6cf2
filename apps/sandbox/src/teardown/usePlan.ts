/** Asks for the plan whenever what it rests on changes; late answers to older questions are dropped. */
import type { TeardownReading } from "@secondline/strength";
import { wrap } from "comlink";
import { useEffect, useState } from "react";
import type { PlanInput, Planner } from "./planner.ts";

export type PlanAnswer =
  | { readonly kind: "busy" }
  | { readonly kind: "done"; readonly reading: TeardownReading }
  | { readonly kind: "failed"; readonly message: string };

export function usePlan(input: PlanInput): PlanAnswer {
  const [answer, setAnswer] = useState<PlanAnswer>({ kind: "busy" });
  useEffect(() => {
    setAnswer({ kind: "busy" });
    // A thread of its own for each question: one that is no longer asked is ended, however long it would have taken.
    const worker = new Worker(new URL("./teardown.worker.ts", import.meta.url), { type: "module" });
    let stale = false;
    const fail = (message: string) => !stale && setAnswer({ kind: "failed", message });
    worker.addEventListener("error", (event) => fail(event.message));
    wrap<Planner>(worker)
      .plan(input)
      .then(
        (reading) => !stale && setAnswer({ kind: "done", reading }),
        (error: unknown) => fail(error instanceof Error ? error.message : String(error)),
      );
    return () => {
      stale = true;
      worker.terminate();
    };
  }, [input]);
  return answer;
}
