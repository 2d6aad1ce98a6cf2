/** The worker's side: offers a runner to the page. */
import * as Comlink from "comlink";
import { InProcessRunner } from "./inProcess.ts";
import { buffersOf } from "./pool/transfer.ts";
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

type RemoteProgress = Comlink.Remote<(progress: Progress) => void> & Comlink.ProxyMethods;

/** The service's verbs as they cross the boundary, with progress as a proxied function. */
export interface ExposedRunner extends Pick<RunnerService, "cancel" | "pause" | "resume" | "setJobs"> {
  run(request: RunRequest, onProgress?: RemoteProgress): ReturnType<RunnerService["run"]>;
  study(request: StudyRequest, onProgress?: RemoteProgress): ReturnType<RunnerService["study"]>;
  chances(request: ChancesRequest, onProgress?: RemoteProgress): ReturnType<RunnerService["chances"]>;
  orders(request: OrdersRequest, onProgress?: RemoteProgress): ReturnType<OrdersService["orders"]>;
  sweep(request: SweepRequest, onProgress?: RemoteProgress): ReturnType<RunnerService["sweep"]>;
}

/** Offers `service` at `endpoint`; default: a runner in this thread, at the worker's own global scope. */
export function exposeRunner(
  endpoint?: Comlink.Endpoint,
  service: RunnerService & OrdersService = new InProcessRunner(),
): void {
  const exposed: ExposedRunner = {
    // Nobody here keeps a shown run, so its arrays are handed over.
    run: async (request, onProgress) => {
      const answer = await answered(onProgress, (report) => service.run(request, report));
      return Comlink.transfer(answer, [...buffersOf(answer)]);
    },
    study: (request, onProgress) => answered(onProgress, (report) => service.study(request, report)),
    chances: (request, onProgress) => answered(onProgress, (report) => service.chances(request, report)),
    orders: (request, onProgress) => answered(onProgress, (report) => service.orders(request, report)),
    sweep: (request, onProgress) => answered(onProgress, (report) => service.sweep(request, report)),
    cancel: (id) => service.cancel(id),
    pause: (id) => service.pause(id),
    resume: (id) => service.resume(id),
    setJobs: (jobs) => service.setJobs(jobs),
  };
  Comlink.expose(exposed, endpoint);
}

/** Runs, reports progress across, and answers once the last of the progress has been heard. */
async function answered<T>(
  onProgress: RemoteProgress | undefined,
  work: (report: (progress: Progress) => void) => Promise<ServiceAnswer<T>>,
): Promise<ServiceAnswer<T>> {
  let heard: Promise<unknown> = Promise.resolve();
  try {
    const answer = await work((progress) => {
      // The work does not wait for the page. A failure of the page's progress function is no fault of the run.
      heard = onProgress?.(progress).catch(() => undefined) ?? heard;
    });
    // Progress and answer take different ways, so the answer could overtake the progress.
    await heard;
    return answer;
  } finally {
    onProgress?.[Comlink.releaseProxy]();
  }
}
