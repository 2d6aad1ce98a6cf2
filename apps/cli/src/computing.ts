/** The threads that compute: workers beside the command line's bundle, or its own thread if there are no workers. */
import { createHash } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { extname } from "node:path";
import { fileURLToPath } from "node:url";
import {
  InProcessRunner,
  layeredResults,
  memoryResults,
  type OrdersService,
  PoolRunner,
  type RunnerService,
} from "@secondline/runner";
import { folderResults, nodeWorkers } from "@secondline/runner/node";

export interface Computing {
  /** How many runs are made at a time; default: as many as there are cores, up to 8. */
  readonly jobs?: number;
  /** A folder in which results of runs are kept from one call of the program to the next. */
  readonly cache?: string;
}

const MOST_JOBS = 8;
const defaultJobs = (): number => Math.min(MOST_JOBS, availableParallelism());

const own = fileURLToPath(import.meta.url);
const workerFile = fileURLToPath(new URL(`./worker${extname(own)}`, import.meta.url));

type Runner = RunnerService & OrdersService;
const runners = new Map<string, Runner>();

/** One runner per folder of results, for the life of the program: its threads are started once. */
export function runnerFor({ jobs = defaultJobs(), cache }: Computing): Runner {
  const key = cache ?? "";
  let runner = runners.get(key);
  if (!runner) {
    // From source there is no bundle of the worker.
    runner = extname(own) !== ".ts" && existsSync(workerFile) ? pooled(jobs, cache) : new InProcessRunner();
    runners.set(key, runner);
  }
  void runner.setJobs(jobs);
  return runner;
}

function pooled(jobs: number, cache: string | undefined): Runner {
  const memory = memoryResults();
  if (cache === undefined) return new PoolRunner({ spawn: nodeWorkers(workerFile), jobs, results: memory });
  const results = layeredResults(memory, folderResults({ folder: cache, code: codeHash() }));
  return new PoolRunner({ spawn: nodeWorkers(workerFile), jobs, results });
}

export const jobsOf = ({ jobs = defaultJobs() }: Computing): number => jobs;

/** Hash of the code that makes runs. The names of the chunks that it imports carry a hash of their content. */
export function codeHash(): string {
  return createHash("sha256")
    .update(readFileSync(existsSync(workerFile) ? workerFile : own))
    .digest("hex");
}
