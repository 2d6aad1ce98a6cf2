/**
 * The coordinating thread: searches, and deals runs to threads of its own, so that the page never waits. The address of their
 * script carries a hash of what is in it; by it results are kept from one visit to the next.
 */
import {
  browserResults,
  exposeRunner,
  layeredResults,
  memoryResults,
  PoolRunner,
  webWorkers,
} from "@secondline/runner";
import { mostJobs } from "./jobs.ts";
import runWorkerUrl from "./run.worker.ts?worker&url";

const memory = memoryResults();
// In development the address stays the same whatever the code.
const results = import.meta.env.PROD ? layeredResults(memory, browserResults({ code: runWorkerUrl })) : memory;
const spawn = webWorkers(() => new Worker(runWorkerUrl, { type: "module" }));

exposeRunner(undefined, new PoolRunner({ spawn, jobs: mostJobs(), results }));
