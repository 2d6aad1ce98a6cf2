import type { CardQuestion, Found, HeaviestFound } from "@secondline/scenarios";
import { cardInput, foundOf, lookForHeavier, type WrittenRecord } from "@secondline/workbench";
import { useEffect } from "react";
import { useJob } from "../state/useJob.ts";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import { answerOf } from "../wearInHand/useAnalysis.ts";
import { useWear } from "../wearInHand/useWear.ts";
import { pageRunner } from "../worker/runner.ts";

/** Share done of the step that is made, and which of them it is, counted from 1. */
interface HeavierProgress {
  readonly done: number;
  readonly step: number;
}

export interface Heavier {
  /** What came of it for the verdict in hand; empty: not looked for. */
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
  const { job, latest, slot } = useJob<{ readonly of: Found } & Heaviest, HeavierProgress>();
  const record = useWear((state) => state.good.written);
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
        if (!answer.ok) return answer;
        return { ok: true, value: { of: found, heavier: await withTerms(answer.value, record) } };
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

type Heaviest = Required<Pick<CardQuestion, "heavier">>;

/** How long the rig keeps with that walker is worked out of the search with that walker. */
async function withTerms({ walker, searched }: HeaviestFound, record: WrittenRecord): Promise<Heaviest["heavier"]> {
  if (!searched) return { walker };
  const { assessment, assessed, found } = searched;
  const input = cardInput({ rig: assessment.rig, on: assessment.on! }, record, assessed, found);
  return { walker, terms: await answerOf((analysis) => analysis.card(input)) };
}
