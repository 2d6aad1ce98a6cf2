/**
 * Results of runs from one visit to the next, as a browser keeps them for somebody who comes back: results are kept by
 * content, and a run that was made for one test need not be made again for another. They lie in a file named after the
 * code that made them, so that all files of tests share them, and another build starts with nothing.
 */
import { appendFileSync, closeSync, existsSync, mkdirSync, openSync, readdirSync, readSync, statSync } from "node:fs";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const SANDBOX = root("apps/sandbox");
const FOLDER = root("node_modules/.cache/secondline-browser-tests");
const THREAD = /^sim\.worker-.*\.js$/;
/** Its name in `packages/runner/src/results/browserResults.ts`. */
const RESULTS_STORE = "secondline-results";

/** Without it the browser asks for an icon of the site, and complains of the missing one when the test's own page is in sight. */
const NO_ICON = '<link rel="icon" href="data:,">';

/** The script that makes the runs, whose name holds a hash of it. */
const threadIn = (outDir: string) => readdirSync(resolve(SANDBOX, outDir, "assets")).find((name) => THREAD.test(name))!;
const file = () => `${FOLDER}/${threadIn("dist")}.results`;

const read = new Map<string, string>();
/** So much of the file has been read [bytes]. */
let readUpTo = 0;

/**
 * By key: a line each of the key, a tabulator, the entry as JSON. A build in another language makes the same runs. What another process
 * has added since is read too.
 */
function known(): ReadonlyMap<string, string> {
  const added = existsSync(file()) ? addedSince(readUpTo) : "";
  // It may be writing a line just now.
  const whole = added.slice(0, added.lastIndexOf("\n") + 1);
  for (const line of whole.split("\n")) if (line !== "") read.set(keyOf(line), line);
  readUpTo += Buffer.byteLength(whole);
  return read;
}

const keyOf = (line: string): string => line.slice(0, line.indexOf("\t"));

function addedSince(from: number): string {
  const text = Buffer.alloc(statSync(file()).size - from);
  const opened = openSync(file(), "r");
  const bytes = readSync(opened, text, 0, text.length, from);
  closeSync(opened);
  return text.toString("utf8", 0, bytes);
}

/** What of the results has been brought into one browser's store, or made there. */
export class Brought {
  readonly #url: string;
  readonly #outDir: string;
  readonly #there = new Set<string>();

  constructor(url: string, outDir: string) {
    this.#url = url;
    this.#outDir = outDir;
  }

  /** Before the app is opened: puts into the store what is kept and not there yet, and removes all else that an earlier visit left. */
  async bring(page: Page): Promise<void> {
    const missing = [...known()].filter(([key]) => !this.#there.has(key));
    const body = missing.map(([, line]) => line).join("\n");
    // A page of the app's origin without any code of it. The results come as a file of their own: as a page they would be laid out.
    const [address, results] = [`${this.#url}kept-results`, `${this.#url}kept-results.txt`];
    await page.route(address, (route) => route.fulfill({ contentType: "text/html", body: NO_ICON }));
    await page.goto(address);
    await page.evaluate(forget, RESULTS_STORE);
    if (missing.length > 0) {
      await page.route(results, (route) => route.fulfill({ contentType: "text/plain", body }));
      await page.evaluate(fill, [RESULTS_STORE, results, `${this.#url}assets/${threadIn(this.#outDir)}`] as const);
      await page.unroute(results);
    }
    await page.unroute(address);
    for (const [key] of missing) this.#there.add(key);
  }

  /** Keeps what the runs of this visit have added. */
  async take(page: Page): Promise<void> {
    const keys = await page.evaluate(keysOf, RESULTS_STORE);
    for (const key of keys) this.#there.add(key);
    const before = known();
    const fresh = keys.filter((key) => !before.has(key));
    if (fresh.length === 0) return;
    const lines = await page.evaluate(linesOf, [RESULTS_STORE, fresh] as const);
    mkdirSync(FOLDER, { recursive: true });
    appendFileSync(file(), lines.map((line) => `${line}\n`).join(""));
  }
}

/** In the page: removes what a visit leaves on the device, but for the results. */
async function forget(store: string): Promise<void> {
  localStorage.clear();
  for (const name of await caches.keys()) await caches.delete(name);
  for (const { name } of await indexedDB.databases()) {
    if (name === undefined || name === store) continue;
    await new Promise((resolve, reject) => {
      const deleting = indexedDB.deleteDatabase(name);
      deleting.onsuccess = resolve;
      deleting.onerror = () => reject(deleting.error);
    });
  }
}

/** In the page: the results, into the store that `packages/runner/src/results/browserResults.ts` opens. */
async function fill([store, results, code]: readonly [string, string, string]): Promise<void> {
  const text = await (await fetch(results)).text();
  /** What `linesOf` wrote in place of what JSON does not know; `everywhere`: among numbers too, of which there are many. */
  const mended = (inner: unknown, everywhere: boolean): unknown => {
    if (typeof inner !== "object" || inner === null) return inner;
    if (Array.isArray(inner))
      return !everywhere && typeof inner[0] === "number" ? inner : inner.map((one) => mended(one, everywhere));
    if ("float32" in inner) return Float32Array.from(inner.float32 as number[]);
    if ("unwritable" in inner) return Number(inner.unwritable);
    return Object.fromEntries(Object.entries(inner).map(([name, one]) => [name, mended(one, everywhere)]));
  };
  const opening = indexedDB.open(store, 1);
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore("runs").createIndex("used", "used");
    opening.result.createObjectStore("meta");
  };
  await new Promise((resolve, reject) => {
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const writing = opening.result.transaction(["runs", "meta"], "readwrite");
      writing.objectStore("meta").put(code, "code");
      for (const line of text.split("\n")) {
        const [key, entry] = line.split("\t");
        writing.objectStore("runs").put(mended(JSON.parse(entry!), entry!.includes('"unwritable"')), key);
      }
      writing.oncomplete = resolve;
      writing.onerror = () => reject(writing.error);
    };
  });
  opening.result.close();
}

/** In the page: the keys in its store. */
async function keysOf(store: string): Promise<string[]> {
  if (!(await indexedDB.databases()).some(({ name }) => name === store)) return [];
  const asked = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const database = await asked(indexedDB.open(store));
  const keys = await asked(database.transaction("runs").objectStore("runs").getAllKeys());
  database.close();
  return keys as string[];
}

/** In the page: entries of its store, as lines. */
async function linesOf([store, keys]: readonly [string, readonly string[]]): Promise<string[]> {
  const asked = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const database = await asked(indexedDB.open(store));
  const runs = database.transaction("runs").objectStore("runs");
  const entries = await Promise.all(keys.map((key) => asked(runs.get(key) as IDBRequest<unknown>)));
  database.close();
  /** To the bit, or not at all: JSON knows no array of numbers, no sign of zero and nothing that is not finite. */
  const written = (entry: unknown): string | undefined => {
    let exact = true;
    const text = JSON.stringify(entry, (_, inner) => {
      if (inner instanceof Float32Array) return { float32: [...inner] };
      if (ArrayBuffer.isView(inner) || inner === undefined) exact = false;
      if (Object.is(inner, -0)) return { unwritable: "-0" };
      return typeof inner === "number" && !Number.isFinite(inner) ? { unwritable: String(inner) } : inner;
    });
    return exact ? text : undefined;
  };
  return keys.flatMap((key, i) => {
    const text = written(entries[i]);
    return text === undefined ? [] : [`${key}\t${text}`];
  });
}
