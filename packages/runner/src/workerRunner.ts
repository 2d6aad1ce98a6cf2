/** The page's side: a runner whose work happens in a worker. The worker is made when it is needed and replaced when it dies. */
import * as Comlink from "comlink";
import type { ExposedRunner } from "./exposed.ts";
import { CANCELLED, failed, messageOf } from "./failure.ts";
import type {
  ChancesRequest,
  OrdersRequest,
  OrdersService,
  Progress,
  RunnerService,
  RunRequest,
  ServiceAnswer,
  StudyRequest,
  SweepRequest,
} from "./service.ts";

/** The methods of a worker that the runner needs; a browser's `Worker` fits. */
export interface RunnerWorker extends Comlink.Endpoint {
  terminate(): unknown;
}

/** A worker that has not taken a cancel after this long is stuck and is replaced [ms]. */
const CANCEL_PATIENCE_MS = 3000;

interface Pending {
  readonly id: string;
  /** Settles the promise that the caller holds; later calls do nothing. */
  readonly settle: (answer: ServiceAnswer<never>) => void;
}
type Call<T> = (
  remote: Comlink.Remote<ExposedRunner>,
  onProgress: (progress: Progress) => void,
) => Promise<ServiceAnswer<T>>;

export class WorkerRunner implements RunnerService, OrdersService {
  readonly #spawn: () => RunnerWorker;
  readonly #pending = new Set<Pending>();
  #worker: RunnerWorker | undefined;
  #remote: Comlink.Remote<ExposedRunner> | undefined;
  #jobs: number | undefined;

  constructor(spawn: () => RunnerWorker) {
    this.#spawn = spawn;
  }

  run(request: RunRequest, onProgress?: (progress: Progress) => void) {
    return this.#call(request.id, onProgress, (remote, report) => remote.run(request, Comlink.proxy(report) as never));
  }

  study(request: StudyRequest, onProgress?: (progress: Progress) => void) {
    return this.#call(request.id, onProgress, (remote, report) =>
      remote.study(request, Comlink.proxy(report) as never),
    );
  }

  chances(request: ChancesRequest, onProgress?: (progress: Progress) => void) {
    return this.#call(request.id, onProgress, (remote, report) =>
      remote.chances(request, Comlink.proxy(report) as never),
    );
  }

  orders(request: OrdersRequest, onProgress?: (progress: Progress) => void) {
    return this.#call(request.id, onProgress, (remote, report) =>
      remote.orders(request, Comlink.proxy(report) as never),
    );
  }

  sweep(request: SweepRequest, onProgress?: (progress: Progress) => void) {
    return this.#call(request.id, onProgress, (remote, report) =>
      remote.sweep(request, Comlink.proxy(report) as never),
    );
  }

  /** Answers the caller at once; later messages of the worker about this request are dropped. */
  async cancel(id: string): Promise<void> {
    const remote = this.#remote;
    if (!this.#settle(id) || !remote) return;
    let patience: ReturnType<typeof setTimeout> | undefined;
    const stuck = new Promise<"stuck">((resolve) => {
      patience = setTimeout(() => resolve("stuck"), CANCEL_PATIENCE_MS);
    });
    const taken = await Promise.race([remote.cancel(id), stuck]);
    clearTimeout(patience);
    if (taken === "stuck" && this.#remote === remote) this.#lose("The computation did not respond and was stopped.");
  }

  async pause(id: string): Promise<void> {
    void this.#remote?.pause(id);
  }

  async resume(id: string): Promise<void> {
    void this.#remote?.resume(id);
  }

  /** The value holds for workers that are made later too. */
  async setJobs(jobs: number): Promise<void> {
    this.#jobs = jobs;
    void this.#remote?.setJobs(jobs);
  }

  /** Ends the worker; pending requests answer `cancelled`. The next request makes a new worker. */
  dispose(): void {
    this.#drop();
    for (const pending of this.#pending) pending.settle(CANCELLED);
  }

  #call<T>(
    id: string,
    onProgress: ((progress: Progress) => void) | undefined,
    call: Call<T>,
  ): Promise<ServiceAnswer<T>> {
    this.#settle(id);
    return new Promise((resolve) => {
      const pending: Pending = {
        id,
        settle: (answer) => {
          if (this.#pending.delete(pending)) resolve(answer);
        },
      };
      this.#pending.add(pending);
      const report = (progress: Progress) => {
        if (this.#pending.has(pending)) onProgress?.(progress);
      };
      try {
        call(this.#connect(), report).then(
          (answer) => pending.settle(answer as ServiceAnswer<never>),
          (error: unknown) => pending.settle(failed("failed", messageOf(error))),
        );
      } catch (error) {
        pending.settle(failed("noWorker", messageOf(error)));
      }
    });
  }

  /** Answers `cancelled` to the caller that waits for `id`; false if none waits. */
  #settle(id: string): boolean {
    const waiting = [...this.#pending].filter((pending) => pending.id === id);
    for (const pending of waiting) pending.settle(CANCELLED);
    return waiting.length > 0;
  }

  #connect(): Comlink.Remote<ExposedRunner> {
    if (this.#remote) return this.#remote;
    const worker = this.#spawn();
    const lost = (event: unknown) => {
      if (this.#worker === worker) this.#lose(`The computation stopped unexpectedly${detail(event)}. Run it again.`);
    };
    worker.addEventListener("error", lost as never);
    worker.addEventListener("messageerror", lost as never);
    this.#worker = worker;
    const remote = Comlink.wrap<ExposedRunner>(worker);
    this.#remote = remote;
    if (this.#jobs !== undefined) void remote.setJobs(this.#jobs);
    return remote;
  }

  #lose(message: string): void {
    this.#drop();
    for (const pending of this.#pending) pending.settle(failed("workerLost", message));
  }

  #drop(): void {
    const worker = this.#worker;
    this.#worker = undefined;
    this.#remote = undefined;
    worker?.terminate();
  }
}

/** A runner in a worker: `createWorkerRunner(() => new Worker(url, { type: "module" }))`. */
export function createWorkerRunner(spawn: () => RunnerWorker): WorkerRunner {
  return new WorkerRunner(spawn);
}

function detail(event: unknown): string {
  const message = (event as { message?: unknown } | undefined)?.message;
  return typeof message === "string" && message !== "" ? ` (${message})` : "";
}
