/** A store of results of runs. A store that cannot be read or written has no results and keeps none; it never fails a study. */
import type { RunResult } from "@secondline/scenarios";

export interface RunResults {
  /** Results in the order of the keys; undefined for a key without a result. */
  get(keys: readonly string[]): Promise<readonly (RunResult | undefined)[]>;
  put(key: string, result: RunResult): Promise<void>;
}

/** Asks a quick store first, then a lasting one. Results of the lasting store are put into the quick one. */
export function layeredResults(quick: RunResults, lasting: RunResults): RunResults {
  return {
    async get(keys) {
      const found = [...(await quick.get(keys))];
      const missing = keys.flatMap((_, i) => (found[i] ? [] : [i]));
      if (missing.length === 0) return found;
      const kept = await lasting.get(missing.map((i) => keys[i]!));
      for (const [k, i] of missing.entries()) {
        const result = kept[k];
        if (!result) continue;
        found[i] = result;
        await quick.put(keys[i]!, result);
      }
      return found;
    },
    async put(key, result) {
      // Nobody waits for a disk.
      void lasting.put(key, result);
      await quick.put(key, result);
    },
  };
}
