/** `--jobs` and `--cache`: how runs are made; neither changes an answer. */
import { sayOptions } from "@secondline/words/terminal/options";
import type { Computing } from "./computing.ts";
import { CommandFailure, EXIT } from "./failure.ts";
import { readWhole } from "./wholeNumber.ts";

export interface ComputingOptions {
  readonly jobs?: string;
  readonly cache?: string;
}

const MOST_JOBS = 64;

export function readComputing({ jobs, cache }: ComputingOptions): Computing {
  if (cache === "") throw new CommandFailure(EXIT.input, [sayOptions("cacheEmpty")]);
  const count = readWhole("--jobs", jobs, 1, MOST_JOBS);
  return { ...(count === undefined ? {} : { jobs: count }), ...(cache === undefined ? {} : { cache }) };
}
