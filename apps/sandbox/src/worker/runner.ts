import { createWorkerRunner, type OrdersService, type RunnerService } from "@secondline/runner";
import { asideRunner } from "@secondline/workbench";
import { HIDDEN_JOBS, mostJobs } from "./jobs.ts";

type PageRunner = RunnerService & OrdersService;
let runner: PageRunner | undefined;

/** The page's one runner: a coordinating thread with its computing threads. It is replaced when it dies. */
export function pageRunner(): PageRunner {
  runner ??= start();
  return runner;
}

/** For what gives way to the rig that is edited. */
export const sideRunner = (): RunnerService => asideRunner(pageRunner());

function start(): PageRunner {
  const made = createWorkerRunner(() => new Worker(new URL("./sim.worker.ts", import.meta.url), { type: "module" }));
  const heed = () => void made.setJobs(document.hidden ? HIDDEN_JOBS : mostJobs());
  document.addEventListener("visibilitychange", heed);
  if (document.hidden) heed();
  return made;
}
