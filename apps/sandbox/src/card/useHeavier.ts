import type { Found, HeaviestWalker } from "@secondline/scenarios";
import { foundOf, lookForHeavier } from "@secondline/workbench";
import { useEffect } from "react";
import { useJob } from "../state/useJob.ts";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import { pageRunner } from "../worker/runner.ts";

/** Share done of the step that is made, and which of them it is, counted from 1. */
interface HeavierProgress {
  readonly done: number;
  readonly step: number;
}

export interface Heavier {
  /** What came of it for the verdict in hand; absent: not looked for. */
  readonly walker: HeaviestWalker | undefined;
  readonly busy: HeavierProgress | undefined;
  readonly failed: boolean;
  readonly start: () => void;
  readonly stop: () => void;
}

/** Heavier walkers are looked for when somebody asks; what was found belongs to the verdict that it was asked of. */
export function useHeavier(): Heavier {
  const { store } = useContextOrThrow();
  const found = useSandbox(foundOf);
  const { job, latest, slot } = useJob<{ readonly of: Found; readonly walker: HeaviestWalker }, HeavierProgress>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: another verdict, or none, ends what was asked of this one
  useEffect(() => () => slot.rest("idle"), [found]);
  function start(): void {
    const { document, assessment } = store.getState();
    const { known, assessed } = assessment;
    if (!found || !known.record) return;
    const id = `card ${crypto.randomUUID()}`;
    const question = {
      document: document.goodDocument,
      assessment: { rig: document.rig, wear: known.record, on: known.on, tests: assessed.tests },
      options: { accuracy: "standard", size: "full" },
    } as const;
    void slot.run({
      begun: { done: 0, step: 1 },
      async run(tell) {
        const onProgress = (done: number, step: number) => tell({ done, step });
        const answer = await lookForHeavier(question, { id, runner: pageRunner(), onProgress });
        return answer.ok ? { ok: true, value: { of: found, walker: answer.value } } : answer;
      },
      cancel: () => void pageRunner().cancel(id),
    });
  }
  return {
    walker: latest?.of === found ? latest?.walker : undefined,
    busy: job.kind === "busy" ? job.progress : undefined,
    failed: job.kind === "failed",
    start,
    stop: () => slot.stop(),
  };
}
