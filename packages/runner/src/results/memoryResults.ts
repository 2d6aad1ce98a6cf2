/** Results of runs in memory. */
import type { RunResult } from "@secondline/scenarios";
import { LeastRecent } from "./leastRecent.ts";
import type { RunResults } from "./runResults.ts";

const MEGABYTE = 2 ** 20;
/** Room for more than fifty whole studies of a common rig, with the data of plots [bytes]. */
const MOST_BYTES = 64 * MEGABYTE;

export function memoryResults(mostBytes: number = MOST_BYTES): RunResults {
  const kept = new LeastRecent<RunResult>(mostBytes);
  return {
    get: async (keys) => keys.map((key) => kept.get(key)),
    put: async (key, result) => kept.put(key, result),
  };
}
