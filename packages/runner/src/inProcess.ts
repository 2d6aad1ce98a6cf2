/** The runner in the thread it is called from: works in slices and lets the event loop breathe between them. */
import { ownThread } from "./pool/ownThread.ts";
import type { RunResults } from "./results/runResults.ts";
import { PoolRunner } from "./runner.ts";

export class InProcessRunner extends PoolRunner {
  constructor(results?: RunResults) {
    super({ spawn: ownThread, jobs: 1, ...(results ? { results } : {}) });
  }

  /** There is one thread. */
  override async setJobs(): Promise<void> {}
}
