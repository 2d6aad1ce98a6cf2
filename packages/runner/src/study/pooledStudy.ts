/**
 * A search whose runs are made by a pool. The search decides in the caller's thread what is to be run; its orders go out run by
 * run, and their results come back to it in the order in which it gave them. So neither the number of workers nor the order of
 * finishing changes an answer.
 */
import {
  type Assessed,
  type Outcome,
  type Round,
  type RunOrder,
  type RunResult,
  type SearchOptions,
  type SearchResult,
  search,
} from "@secondline/scenarios";
import { CANCELLED, type Failed } from "../failure.ts";
import type { Rank, Ticket, WorkerPool } from "../pool/workerPool.ts";
import { runKey, serves, worthStoring } from "../results/resultKey.ts";
import type { RunResults } from "../results/runResults.ts";
import type { Progress, ServiceAnswer } from "../service.ts";
import { nextTask } from "../tasks/nextTask.ts";
import type { RunCosts } from "./costs.ts";
import { makeOrder } from "./makeOrder.ts";

export interface PooledStudy {
  readonly assessed: Assessed;
  readonly options: SearchOptions;
  readonly pool: WorkerPool;
  readonly results: RunResults;
  readonly costs: RunCosts;
  readonly rank: Rank;
  readonly ticket: Ticket;
  readonly onProgress: (progress: Progress) => void;
}

export interface Searched {
  readonly found: SearchResult;
  /** Whether every run was made; if false, another try may find more. */
  readonly whole: boolean;
}

export async function pooledStudy(study: PooledStudy): Promise<ServiceAnswer<Searched>> {
  await nextTask();
  let whole = true;
  const { likelyFirst } = await import("@secondline/scenarios/likelyFirst");
  const work = search(study.assessed, study.options, likelyFirst);
  const teller = new Teller(study.onProgress);
  let step = work.next();
  while (!step.done) {
    const results = await makeRound(study, step.value, teller);
    if (!results.ok) return results;
    // The search will compute for a moment now, so messages that have come in meanwhile, such as a cancel, are handled first.
    await nextTask();
    if (study.ticket.cancelled) return CANCELLED;
    whole &&= results.value.every(worthStoring);
    step = work.next(results.value);
  }
  return { ok: true, value: { found: step.value, whole } };
}

/** All runs of a round; a failure if one of them could not be tried at all. */
async function makeRound(
  study: PooledStudy,
  round: Round,
  teller: Teller,
): Promise<ServiceAnswer<readonly RunResult[]>> {
  const { assessed, results, costs, options } = study;
  const { orders, soFar } = round;
  const keys = orders.map((order) => runKey(assessed, order));
  const found = (await results.get(keys)).map((kept, i) => (serves(kept, orders[i]!) ? kept : undefined));
  teller.begin(round, found.filter(Boolean).length);
  const missing = orders.flatMap((_, i) => (found[i] ? [] : [i]));
  let failure: Failed | undefined;
  const making = costs
    .longestFirst(missing.map((i) => orders[i]!))
    .map((k) => missing[k]!)
    .map(async (i) => {
      const answer = await makeRun(study, orders[i]!, keys[i]!, teller);
      if (answer.ok) found[i] = answer.value;
      else failure ??= answer;
    });
  // Works out the result so far while other runs go on; if no run is left, the next round follows at once.
  if (soFar && options.tellSoFar && making.length > 0) {
    await nextTask();
    if (!study.ticket.cancelled) teller.tellSoFar(soFar);
  }
  await Promise.all(making);
  return failure ?? { ok: true, value: found as RunResult[] };
}

async function makeRun(
  study: PooledStudy,
  order: RunOrder,
  key: string,
  teller: Teller,
): Promise<ServiceAnswer<RunResult>> {
  const { assessed, rank, ticket, costs } = study;
  const run = teller.run();
  const answer = await makeOrder(study, { assessed, order }, key, {
    rank,
    ticket,
    onProgress: ({ done }) => run.at(done, order),
    onTook: (ms) => costs.took(order, ms),
  });
  run.finished();
  return answer;
}

/** Largest share of the time for working out the result so far, which takes as long as a run [-]. */
const SO_FAR_SHARE = 0.15;

/** Reports the progress of a study. It never goes back, and the progress inside each run counts. */
class Teller {
  readonly #onProgress: (progress: Progress) => void;
  #made = 0;
  #expected = 1;
  #of = 0;
  #done = 0;
  #shares: number[] = [];
  /** The result so far is not told before this time [ms]. */
  #soFarFrom = 0;

  constructor(onProgress: (progress: Progress) => void) {
    this.#onProgress = onProgress;
  }

  begin({ made, expected, of }: Round, known: number): void {
    this.#made = made + known;
    this.#expected = expected;
    this.#of = of;
    this.#shares = [];
  }

  tell(more: Partial<Progress>): void {
    const share = this.#shares.reduce((sum, one) => sum + one, this.#made) / this.#expected;
    this.#done = Math.max(this.#done, Math.min(1, share));
    this.#onProgress({ done: this.#done, made: this.#made, of: this.#of, ...more });
  }

  tellSoFar(soFar: () => Outcome): void {
    const begun = performance.now();
    if (begun < this.#soFarFrom) return;
    this.tell({ soFar: soFar() });
    const now = performance.now();
    this.#soFarFrom = now + (now - begun) * (1 / SO_FAR_SHARE - 1);
  }

  run() {
    const shares = this.#shares;
    const place = shares.push(0) - 1;
    return {
      at: (share: number, { event }: RunOrder) => {
        shares[place] = Math.max(shares[place]!, share);
        this.tell({ doing: event });
      },
      finished: () => {
        this.#made++;
        shares[place] = 0;
      },
    };
  }
}
