import type { RunnerService } from "@secondline/runner";
import { pageRunner } from "./runner.ts";

/**
 * For layouts, lessons and chances: the same threads and kept results as the rig that is edited, to which they give way. Its ids
 * are apart from those of the page.
 */
export function sideRunner(): RunnerService {
  const runner = pageRunner();
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
