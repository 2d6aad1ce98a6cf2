import { sayBreakLog } from "@secondline/words/page/breakLog";
import { type Remote, wrap } from "comlink";
import { useEffect } from "react";
import { type JobInHand, useJob } from "../state/useJob.ts";
import type { Analysis } from "./analysis.ts";

let remote: Remote<Analysis> | undefined;
/** Callers that wait for an answer; all are told when the thread dies. */
const waiting = new Set<(error: Error) => void>();

/** The thread for statistics, made when first needed; one that dies is replaced at the next question. */
function analysis(): Remote<Analysis> {
  if (remote) return remote;
  const worker = new Worker(new URL("./wear.worker.ts", import.meta.url), { type: "module" });
  const stopped = (message: string) => {
    remote = undefined;
    worker.terminate();
    for (const fail of waiting) fail(new Error(message));
    waiting.clear();
  };
  worker.addEventListener("error", (event) =>
    stopped(sayBreakLog("useAnalysis.threadStopped", { message: event.message })),
  );
  worker.addEventListener("messageerror", () => stopped(sayBreakLog("useAnalysis.threadUnreadable")));
  remote = wrap<Analysis>(worker);
  return remote;
}

/** The answer of the thread, or an error when it dies before it has answered. */
export async function analysisAnswer<T>(ask: (analysis: Remote<Analysis>) => Promise<T>): Promise<T> {
  let fail: (error: Error) => void = () => undefined;
  const death = new Promise<never>((_, reject) => {
    fail = reject;
  });
  waiting.add(fail);
  try {
    return await Promise.race([ask(analysis()), death]);
  } finally {
    waiting.delete(fail);
  }
}

/** A change waits this long for the next one [ms]. */
const SETTLE_MS = 200;

/** Asks again when `key` changes, a moment after the last change. */
export function useAnalysis<T>(
  key: unknown,
  ask: ((analysis: Remote<Analysis>) => Promise<T>) | undefined,
): Omit<JobInHand<T, undefined>, "slot"> {
  const { slot, ...answer } = useJob<T>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` stands for all that the question is made of
  useEffect(() => {
    if (!ask) return;
    slot.rest("waiting");
    const timer = setTimeout(() => {
      // The thread finishes what it began: to end it would cost the others their answers.
      const run = async () => ({ ok: true, value: await analysisAnswer(ask) }) as const;
      void slot.run({ begun: undefined, run, cancel: () => undefined });
    }, SETTLE_MS);
    return () => {
      clearTimeout(timer);
      slot.rest("idle");
    };
  }, [key]);
  return answer;
}
