import type { RunnerService } from "@secondline/runner";
import type { Services } from "../inHand/state.ts";

type Runner = Services["runner"];

/** The fall that is looked at comes first; the search for a layout's verdict gives way to that of the open rig. */
export const layoutRunner = (eye: Runner, aside: Runner): Runner => ({
  run: (request, onProgress) => eye.run(request, onProgress),
  study: (request, onProgress) => aside.study(request, onProgress),
  async cancel(id) {
    await Promise.all([eye.cancel(id), aside.cancel(id)]);
  },
});

/**
 * For layouts, lessons and chances: the same threads and kept results as the rig that is edited, to which they give way. Its ids
 * are apart from those of the page.
 */
export function asideRunner(runner: RunnerService): RunnerService {
  const own = (id: string) => `side ${id}`;
  const aside = <T extends { readonly id: string }>(request: T) => ({
    ...request,
    id: own(request.id),
    background: true,
  });
  return {
    run: (request, onProgress) => runner.run(aside(request), onProgress),
    study: (request, onProgress) => runner.study(aside(request), onProgress),
    chances: (request, onProgress) => runner.chances(aside(request), onProgress),
    sweep: (request, onProgress) => runner.sweep({ ...request, id: own(request.id) }, onProgress),
    cancel: (id) => runner.cancel(own(id)),
    pause: (id) => runner.pause(own(id)),
    resume: (id) => runner.resume(own(id)),
    setJobs: (jobs) => runner.setJobs(jobs),
  };
}
