import type { CardQuestion, SearchResult } from "@secondline/scenarios";
import { foundOf, type Heaviest, heavierOf } from "@secondline/workbench";
import { useEffect } from "react";
import { useJob } from "../state/useJob.ts";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import type { Analysis } from "../wearInHand/analysis.ts";
import { analysisAnswer } from "../wearInHand/useAnalysis.ts";
import { useWear } from "../wearInHand/useWear.ts";
import { pageRunner } from "../worker/runner.ts";

/** Share done of the current step, and the number of the step, counted from 1. */
interface HeavierProgress {
  readonly done: number;
  readonly step: number;
}

export interface Heavier {
  /** The result for the current verdict; empty: not looked for. */
  readonly found: Pick<CardQuestion, "heavier">;
  readonly busy: HeavierProgress | undefined;
  readonly failed: boolean;
  readonly start: () => void;
  readonly stop: () => void;
}

/** Heavier walkers are looked for when somebody asks; what was found belongs to the verdict that it was asked of. */
export function useHeavier(): Heavier {
  const { store } = useContextOrThrow();
  const found = useSandbox(foundOf);
  const { job, latest, slot } = useJob<{ readonly of: SearchResult } & Heaviest, HeavierProgress>();
  const record = useWear((state) => state.good.written);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another verdict, or none, ends what was asked of this one
  useEffect(() => () => slot.rest("idle"), [found]);
  function start(): void {
    const look = heavierOf(store.getState(), found, record);
    if (!look || !found) return;
    const id = `card ${crypto.randomUUID()}`;
    void slot.run({
      begun: { done: 0, step: 1 },
      async run(tell) {
        const onProgress = (done: number, step: number) => tell({ done, step });
        const datesOf = (input: Parameters<Analysis["card"]>[0]) => analysisAnswer((analysis) => analysis.card(input));
        const answer = await look({ id, runner: pageRunner(), onProgress, datesOf });
        return answer.ok ? { ok: true, value: { of: found, ...answer.value } } : answer;
      },
      cancel: () => void pageRunner().cancel(id),
    });
  }
  return {
    found: latest?.of === found && latest ? { heavier: latest.heavier } : {},
    busy: job.kind === "busy" ? job.progress : undefined,
    failed: job.kind === "failed",
    start,
    stop: () => slot.stop(),
  };
}
