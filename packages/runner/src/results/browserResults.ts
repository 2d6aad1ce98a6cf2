/** Results of runs in the browser's IndexedDB; a browser that refuses one (a private window, no room) keeps nothing. */
import type { RunResult } from "@secondline/scenarios";
import type { RunResults } from "./runResults.ts";

const RUNS_STORE = "runs";
const USED_INDEX = "used";
/** Some 30 MB. */
const MOST_RUNS = 6000;
/** Number of writes after which old results are looked for [-]. */
const WRITES_BETWEEN_TIDYING = 200;

interface Entry {
  readonly result: RunResult;
  /** Time of writing [ms since 1970]. */
  readonly used: number;
}

export interface BrowserResultsOptions {
  readonly name?: string;
  /** Names the code that makes the runs, such as the address of its script: results of another code are removed. */
  readonly code: string;
  readonly mostRuns?: number;
}

export function browserResults({
  name = "secondline-results",
  code,
  mostRuns = MOST_RUNS,
}: BrowserResultsOptions): RunResults {
  let opened: Promise<IDBDatabase | undefined> | undefined;
  let written = 0;
  const database = () => {
    opened ??= Promise.race([open(name, code).catch(() => undefined), patience()]);
    return opened;
  };
  return {
    async get(keys) {
      const db = await database();
      if (!db) return keys.map(() => undefined);
      try {
        const store = db.transaction(RUNS_STORE).objectStore(RUNS_STORE);
        const entries = await Promise.all(keys.map((key) => answerOf<Entry | undefined>(store.get(key))));
        return entries.map((entry) => entry?.result);
      } catch {
        return keys.map(() => undefined);
      }
    },
    async put(key, result) {
      const db = await database();
      try {
        const store = db?.transaction(RUNS_STORE, "readwrite").objectStore(RUNS_STORE);
        if (!store) return;
        await answerOf(store.put({ result, used: Date.now() } satisfies Entry, key));
        if (++written % WRITES_BETWEEN_TIDYING === 0) await tidy(store, mostRuns);
      } catch {
        // The result stays in memory all the same.
      }
    },
  };
}

/** A browser may let a page wait for its database for ever [ms]. */
const OPEN_PATIENCE_MS = 2000;
const patience = () => new Promise<undefined>((resolve) => setTimeout(resolve, OPEN_PATIENCE_MS, undefined));

const META_STORE = "meta";
const CODE_KEY = "code";

async function open(name: string, code: string): Promise<IDBDatabase> {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore(RUNS_STORE).createIndex(USED_INDEX, USED_INDEX);
    opening.result.createObjectStore(META_STORE);
  };
  const db = await answerOf(opening);
  // A newer version of the page wants another form of the database, so this page closes it.
  db.onversionchange = () => db.close();
  const both = db.transaction([RUNS_STORE, META_STORE], "readwrite");
  const meta = both.objectStore(META_STORE);
  if ((await answerOf(meta.get(CODE_KEY))) !== code) {
    await answerOf(both.objectStore(RUNS_STORE).clear());
    await answerOf(meta.put(code, CODE_KEY));
  }
  return db;
}

/** Removes the results that were written longest ago. */
async function tidy(store: IDBObjectStore, mostRuns: number): Promise<void> {
  let over = (await answerOf(store.count())) - mostRuns;
  const walk = store.index(USED_INDEX).openKeyCursor();
  for (let cursor = await answerOf(walk); cursor && over > 0; over--) {
    store.delete(cursor.primaryKey);
    cursor.continue();
    cursor = await answerOf(walk);
  }
}

function answerOf<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
