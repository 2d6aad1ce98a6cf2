/** Heavier walkers are looked for when somebody asks; how long the rig keeps with one is worked out of the search with that walker. */
import type { CardQuestion, HeaviestFound, SearchResult } from "@secondline/scenarios";
import type { WrittenRecord } from "../documents/documents.ts";
import type { SandboxState } from "../inHand/state.ts";
import type { TaskAnswer } from "../job/job.ts";
import { type CardDates, type cardDates, cardInput } from "../wear/dates.ts";
import { type HeavierWork, lookForHeavier } from "./heavier.ts";

export type Heaviest = Required<Pick<CardQuestion, "heavier">>;

export interface HeavierServices extends HeavierWork {
  /** Works out dates, off the page's thread. */
  readonly datesOf: (input: Parameters<typeof cardDates>[0]) => Promise<CardDates>;
}

/** The search for a heavier walker, from the current state and its verdict; undefined without a record, from which dates follow. */
export function heavierOf(
  { document, assessment }: Pick<SandboxState, "document" | "assessment">,
  found: SearchResult | undefined,
  record: WrittenRecord,
): ((services: HeavierServices) => Promise<TaskAnswer<Heaviest>>) | undefined {
  const { known, assessed } = assessment;
  if (!found || !known.record) return undefined;
  const question = {
    document: document.goodDocument,
    assessment: { rig: document.rig, wear: known.record, on: known.on, tests: assessed.tests },
    options: { accuracy: "standard", size: "full" },
  } as const;
  return async (services) => {
    const answer = await lookForHeavier(question, services);
    if (!answer.ok) return answer;
    return { ok: true, value: { heavier: await withTerms(answer.value, record, services.datesOf) } };
  };
}

async function withTerms(
  { walker, searched }: HeaviestFound,
  record: WrittenRecord,
  datesOf: HeavierServices["datesOf"],
): Promise<Heaviest["heavier"]> {
  if (!searched) return { walker };
  const { assessment, assessed, found } = searched;
  return {
    walker,
    terms: await datesOf(cardInput({ rig: assessment.rig, on: assessment.on! }, record, assessed, found)),
  };
}
