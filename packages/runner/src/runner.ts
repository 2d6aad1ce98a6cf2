/** Answers requests: a study by a search in this thread and runs in the pool's, everything else by one task. */
import type { Chances, RunResult, SearchResult, WhatIfRun } from "@secondline/scenarios";
import { CANCELLED, failureOf } from "./failure.ts";
import { type Ticket, WorkerPool, type WorkerPoolOptions } from "./pool/workerPool.ts";
import { LeastRecent } from "./results/leastRecent.ts";
import { memoryResults } from "./results/memoryResults.ts";
import { studyKey } from "./results/resultKey.ts";
import type { RunResults } from "./results/runResults.ts";
import type {
  ChancesRequest,
  OrdersRequest,
  OrdersService,
  Progress,
  RunnerService,
  RunRequest,
  ServiceAnswer,
  StudyRequest,
  SweepAnswer,
  SweepRequest,
} from "./service.ts";
import { RunCosts } from "./study/costs.ts";
import { pooledOrders } from "./study/pooledOrders.ts";
import { pooledStudy } from "./study/pooledStudy.ts";

export interface PoolRunnerOptions extends WorkerPoolOptions {
  /** Store that is asked before a run is made; default: in memory. */
  readonly results?: RunResults;
}

type OnProgress = (progress: Progress) => void;

/** A request on its way. */
interface Open {
  readonly ticket: Ticket;
  /** Answers the waiting caller. */
  readonly cancel: () => void;
}

/** Room for finished studies that are kept whole, because undo comes back to them [bytes]. */
const MOST_STUDY_BYTES = 32 * 2 ** 20;

export class PoolRunner implements RunnerService, OrdersService {
  readonly #pool: WorkerPool;
  readonly #results: RunResults;
  readonly #costs = new RunCosts();
  readonly #studies = new LeastRecent<SearchResult>(MOST_STUDY_BYTES);
  readonly #open = new Map<string, Open>();

  constructor({ results = memoryResults(), ...pool }: PoolRunnerOptions) {
    this.#pool = new WorkerPool(pool);
    this.#results = results;
  }

  run(request: RunRequest, onProgress?: OnProgress): Promise<ServiceAnswer<WhatIfRun>> {
    const { id, assessed, whatIf, background, ...options } = request;
    return this.#answer(id, onProgress, (ticket, report) => {
      const call = { rank: background ? "background" : "eye", ticket, onProgress: report } as const;
      return this.#pool.work<"show">(assessed, { kind: "show", whatIf, options }, call);
    });
  }

  study(request: StudyRequest, onProgress?: OnProgress): Promise<ServiceAnswer<SearchResult>> {
    const { id, assessed, background, ...options } = request;
    return this.#answer(id, onProgress, async (ticket, report) => {
      const key = studyKey(assessed, options);
      const known = this.#studies.get(key);
      if (known) return { ok: true, value: known };
      const answer = await pooledStudy({
        assessed,
        options,
        pool: this.#pool,
        results: this.#results,
        costs: this.#costs,
        rank: background ? "background" : "study",
        ticket,
        onProgress: report,
      });
      if (!answer.ok) return answer;
      const { found, whole } = answer.value;
      if (whole) this.#studies.put(key, found);
      return { ok: true, value: found };
    });
  }

  chances(request: ChancesRequest, onProgress?: OnProgress): Promise<ServiceAnswer<Chances>> {
    const { id, assessed, background, ...options } = request;
    return this.#answer(id, onProgress, async (ticket, report) => {
      // Loaded when it is needed: few requests need it, and it is a sixth of the thread's code.
      const { pooledChances } = await import("./study/pooledChances.ts");
      return pooledChances({
        assessed,
        options,
        pool: this.#pool,
        results: this.#results,
        rank: background ? "background" : "study",
        ticket,
        onProgress: report,
      });
    });
  }

  orders({ id, orders }: OrdersRequest, onProgress?: OnProgress): Promise<ServiceAnswer<readonly RunResult[]>> {
    return this.#answer(id, onProgress, (ticket, report) =>
      pooledOrders({
        orders,
        pool: this.#pool,
        results: this.#results,
        rank: "study",
        ticket,
        onProgress: report,
      }),
    );
  }

  sweep({ id, ...asked }: SweepRequest, onProgress?: OnProgress): Promise<ServiceAnswer<SweepAnswer>> {
    return this.#answer(id, onProgress, async (ticket, report) => {
      const { pooledSweep } = await import("./study/pooledSweep.ts");
      const work = { pool: this.#pool, results: this.#results, rank: "study", ticket, onProgress: report } as const;
      return pooledSweep({ ...work, ...asked });
    });
  }

  async cancel(id: string): Promise<void> {
    const open = this.#open.get(id);
    if (!open) return;
    this.#open.delete(id);
    open.ticket.cancelled = true;
    open.cancel();
    this.#pool.look();
  }

  async pause(id: string): Promise<void> {
    this.#setPaused(id, true);
  }

  async resume(id: string): Promise<void> {
    this.#setPaused(id, false);
  }

  #setPaused(id: string, paused: boolean): void {
    const open = this.#open.get(id);
    if (open) open.ticket.paused = paused;
    this.#pool.look();
  }

  async setJobs(jobs: number): Promise<void> {
    this.#pool.setJobs(jobs);
  }

  get state(): WorkerPool["state"] {
    return this.#pool.state;
  }

  /** Ends the pool's threads; pending requests answer `cancelled`. */
  dispose(): void {
    for (const id of [...this.#open.keys()]) void this.cancel(id);
    this.#pool.dispose();
  }

  /**
   * Answers a cancel at once, and ignores later messages of the work. A second request under the same id takes the place of the
   * first.
   */
  #answer<T>(
    id: string,
    onProgress: OnProgress | undefined,
    work: (ticket: Ticket, report: OnProgress) => Promise<ServiceAnswer<T>>,
  ): Promise<ServiceAnswer<T>> {
    void this.cancel(id);
    const ticket: Ticket = { cancelled: false, paused: false };
    const report = (progress: Progress) => {
      if (!ticket.cancelled) onProgress?.(progress);
    };
    return new Promise((resolve) => {
      const open: Open = { ticket, cancel: () => resolve(CANCELLED) };
      this.#open.set(id, open);
      void work(ticket, report)
        .catch(failureOf)
        .then((answer) => {
          if (this.#open.get(id) === open) this.#open.delete(id);
          resolve(answer);
        });
    });
  }
}
