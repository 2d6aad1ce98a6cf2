/** The runner in the caller's own thread. It works in slices, and the event loop runs between them. */
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
