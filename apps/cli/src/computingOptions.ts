/** `--jobs` and `--cache`: how runs are made; neither changes an answer. */
import type { Computing } from "./computing.ts";
import { CommandFailure, EXIT } from "./failure.ts";

export interface ComputingOptions {
  readonly jobs?: string;
  readonly cache?: string;
}

const MOST_JOBS = 64;

export function readComputing({ jobs, cache }: ComputingOptions): Computing {
  if (cache === "") throw new CommandFailure(EXIT.input, ["--cache: this is empty; name a folder."]);
  return { ...(jobs === undefined ? {} : { jobs: readJobs(jobs) }), ...(cache === undefined ? {} : { cache }) };
}

function readJobs(text: string): number {
  const jobs = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (jobs >= 1 && jobs <= MOST_JOBS) return jobs;
  throw new CommandFailure(EXIT.input, [`--jobs: got "${text}"; expected a whole number from 1 to ${MOST_JOBS}.`]);
}
