import { type ChancesService, createWorkerRunner, type RunnerService } from "@secondline/runner";

/** A runner in a worker of its own, which is replaced when it dies. */
export function pageRunner(): RunnerService & ChancesService {
  return createWorkerRunner(() => new Worker(new URL("./sim.worker.ts", import.meta.url), { type: "module" }));
}
