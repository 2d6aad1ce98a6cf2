import { sayBreakLog } from "@secondline/words/page/breakLog";
import { type Remote, wrap } from "comlink";
import { useEffect, useState } from "react";
import type { Analysis } from "./analysis.ts";

export type Answer<T> =
  | { readonly kind: "busy"; readonly last: T | undefined }
  | { readonly kind: "done"; readonly value: T }
  | { readonly kind: "failed"; readonly message: string };

let remote: Remote<Analysis> | undefined;
/** Those who wait for an answer; all are told when the thread dies. */
const waiting = new Set<(message: string) => void>();

/** The thread for statistics, made when first needed; one that dies is replaced at the next question. */
function analysis(): Remote<Analysis> {
  if (remote) return remote;
  const worker = new Worker(new URL("./wear.worker.ts", import.meta.url), { type: "module" });
  const stopped = (message: string) => {
    remote = undefined;
    worker.terminate();
    for (const fail of waiting) fail(message);
    waiting.clear();
  };
  worker.addEventListener("error", (event) =>
    stopped(sayBreakLog("useAnalysis.computingThreadStopped", { message: event.message })),
  );
  worker.addEventListener("messageerror", () => stopped(sayBreakLog("useAnalysis.computingThreadSent")));
  remote = wrap<Analysis>(worker);
  return remote;
}

/** Asks again when `key` changes, a moment after the last change; late answers to older questions are dropped. */
export function useAnalysis<T>(key: unknown, ask: ((analysis: Remote<Analysis>) => Promise<T>) | undefined): Answer<T> {
  const [answer, setAnswer] = useState<Answer<T>>({ kind: "busy", last: undefined });
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` stands for all that the question is made of
  useEffect(() => {
    if (!ask) return;
    let stale = false;
    const fail = (message: string) => !stale && setAnswer({ kind: "failed", message });
    setAnswer((before) => ({
      kind: "busy",
      last: before.kind === "done" ? before.value : before.kind === "busy" ? before.last : undefined,
    }));
    const timer = setTimeout(() => {
      waiting.add(fail);
      ask(analysis())
        .then(
          (value) => !stale && setAnswer({ kind: "done", value }),
          (error: unknown) => fail(error instanceof Error ? error.message : String(error)),
        )
        .finally(() => waiting.delete(fail));
    }, 200);
    return () => {
      stale = true;
      waiting.delete(fail);
      clearTimeout(timer);
    };
  }, [key]);
  return answer;
}

/** The value at hand, of this question or still of the one before. */
export const latestOf = <T>(answer: Answer<T>): T | undefined =>
  answer.kind === "done" ? answer.value : answer.kind === "busy" ? answer.last : undefined;
