/** The worker's side: offers a runner to the page. The worker file holds one line, `exposeRunner()`. */
import * as Comlink from "comlink";
import { InProcessRunner } from "./inProcess.ts";
import type {
  Answer,
  ChancesRequest,
  ChancesService,
  Progress,
  RunnerService,
  RunRequest,
  StudyRequest,
} from "./service.ts";
import { buffersOf } from "./transfer.ts";

type RemoteProgress = Comlink.Remote<(progress: Progress) => void> & Comlink.ProxyMethods;

/** What crosses the boundary: the service's verbs, with progress as a proxied function. */
export interface ExposedRunner {
  run(request: RunRequest, onProgress?: RemoteProgress): ReturnType<RunnerService["run"]>;
  study(request: StudyRequest, onProgress?: RemoteProgress): ReturnType<RunnerService["study"]>;
  chances(request: ChancesRequest, onProgress?: RemoteProgress): ReturnType<ChancesService["chances"]>;
  cancel(id: string): Promise<void>;
}

/** Offers `service` at `endpoint`; default: a new runner, at the worker's own global scope. */
export function exposeRunner(
  endpoint?: Comlink.Endpoint,
  service: RunnerService & ChancesService = new InProcessRunner(),
): void {
  const exposed: ExposedRunner = {
    run: (request, onProgress) => answer(onProgress, (report) => service.run(request, report)),
    study: (request, onProgress) => answer(onProgress, (report) => service.study(request, report)),
    chances: (request, onProgress) => answer(onProgress, (report) => service.chances(request, report)),
    cancel: (id) => service.cancel(id),
  };
  Comlink.expose(exposed, endpoint);
}

/** Runs, reports progress across, and hands the typed arrays of the answer over once the last of the progress has been heard. */
async function answer<T>(
  onProgress: RemoteProgress | undefined,
  work: (report: (progress: Progress) => void) => Promise<Answer<T>>,
): Promise<Answer<T>> {
  let heard: Promise<unknown> = Promise.resolve();
  try {
    const done = await work((progress) => {
      // The work does not wait for it; what the page makes of it is no fault of the run.
      heard = onProgress?.(progress).catch(() => undefined) ?? heard;
    });
    // Progress goes another way than the answer, which could overtake it.
    await heard;
    return Comlink.transfer(done, [...buffersOf(done)]);
  } finally {
    onProgress?.[Comlink.releaseProxy]();
  }
}
