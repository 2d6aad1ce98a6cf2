/** Where results of runs are kept. A store that cannot be read or written has nothing and keeps nothing: it never fails a study. */
import type { RunResult } from "@secondline/scenarios";

export interface RunResults {
  /** In the order of the keys; undefined where nothing is kept. */
  get(keys: readonly string[]): Promise<readonly (RunResult | undefined)[]>;
  put(key: string, result: RunResult): Promise<void>;
}

/** Asks a quick store first, then a lasting one, and puts what the lasting one has into the quick one. */
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
      await quick.put(key, result);
      await lasting.put(key, result);
    },
  };
}
