/**
 * The computing threads: one that coordinates, which searches and deals runs out, so that the page never waits; and those that
 * make the runs. All of them are this script, which is loaded once; a thread's name says what it is for. The address carries a
 * hash of what is in it; by it results are kept from one visit to the next.
 */
import {
  browserResults,
  exposeRunner,
  layeredResults,
  memoryResults,
  PoolRunner,
  serveTasks,
  type WorkerPort,
  webWorkers,
} from "@secondline/runner";
import { mostJobs } from "./jobs.ts";

const RUNS = "runs";

function coordinate(): void {
  const memory = memoryResults();
  const address = self.location.href;
  // In development the address stays the same whatever the code.
  const results = import.meta.env.PROD ? layeredResults(memory, browserResults({ code: address })) : memory;
  const spawn = webWorkers(() => new Worker(address, { type: "module", name: RUNS }));
  exposeRunner(undefined, new PoolRunner({ spawn, jobs: mostJobs(), results }));
}

if (self.name === RUNS) serveTasks(self as unknown as WorkerPort);
else coordinate();
