/**
 * Results of runs from one visit to the next, as a browser keeps them for somebody who comes back: results are kept by
 * content, and a run that was made for one test need not be made again for another. They lie in a file named after the
 * code that made them, so that all files of tests share them, and another build starts with nothing.
 */
import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const FOLDER = root("node_modules/.cache/secondline-browser-tests");
const THREAD = /^sim\.worker-.*\.js$/;

/** The script that makes the runs, whose name holds a hash of it. */
const thread = () => readdirSync(root("apps/sandbox/dist/assets")).find((name) => THREAD.test(name))!;
const file = () => `${FOLDER}/${thread()}.results`;

/** A line each: the key, a tabulator, the entry as JSON. */
const read = (): string => (existsSync(file()) ? readFileSync(file(), "utf8") : "");
const keysIn = (text: string): string[] =>
  text
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => line.slice(0, line.indexOf("\t")));

/** Puts what is kept into the browser's store, before the app is opened for the first time. */
export async function bringResults(page: Page, url: string): Promise<void> {
  const body = read();
  if (body === "") return;
  // A page of the app's origin without any code of it. The results come as a file of their own: as a page they would be laid out.
  const [address, results] = [`${url}kept-results`, `${url}kept-results.txt`];
  await page.route(address, (route) => route.fulfill({ contentType: "text/html", body: "" }));
  await page.route(results, (route) => route.fulfill({ contentType: "text/plain", body }));
  await page.goto(address);
  await page.evaluate(fill, [results, `${url}assets/${thread()}`] as const);
  await page.unroute(address);
  await page.unroute(results);
}

/** Keeps what the runs of this visit have added. */
export async function takeResults(page: Page): Promise<void> {
  const lines = await page.evaluate(added, keysIn(read()));
  if (lines.length === 0) return;
  mkdirSync(FOLDER, { recursive: true });
  appendFileSync(file(), lines.map((line) => `${line}\n`).join(""));
}

/** In the page: the results, into the store that `packages/runner/src/results/browserResults.ts` opens. */
async function fill([results, code]: readonly [string, string]): Promise<void> {
  const text = await (await fetch(results)).text();
  /** What `added` wrote in place of what JSON does not know; `everywhere`: among numbers too, of which there are many. */
  const mended = (inner: unknown, everywhere: boolean): unknown => {
    if (typeof inner !== "object" || inner === null) return inner;
    if (Array.isArray(inner))
      return !everywhere && typeof inner[0] === "number" ? inner : inner.map((one) => mended(one, everywhere));
    if ("float32" in inner) return Float32Array.from(inner.float32 as number[]);
    if ("unwritable" in inner) return Number(inner.unwritable);
    return Object.fromEntries(Object.entries(inner).map(([name, one]) => [name, mended(one, everywhere)]));
  };
  const opening = indexedDB.open("secondline-results", 1);
  opening.onupgradeneeded = () => {
    opening.result.createObjectStore("runs").createIndex("used", "used");
    opening.result.createObjectStore("meta");
  };
  await new Promise((resolve, reject) => {
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const writing = opening.result.transaction(["runs", "meta"], "readwrite");
      writing.objectStore("meta").put(code, "code");
      for (const line of text.split("\n").filter((one) => one !== "")) {
        const [key, entry] = line.split("\t");
        writing.objectStore("runs").put(mended(JSON.parse(entry!), entry!.includes('"unwritable"')), key);
      }
      writing.oncomplete = resolve;
      writing.onerror = () => reject(writing.error);
    };
  });
  opening.result.close();
}

/** In the page: entries of its store that are not `known`, as lines. */
async function added(known: string[]): Promise<string[]> {
  if (!(await indexedDB.databases()).some(({ name }) => name === "secondline-results")) return [];
  const asked = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const database = await asked(indexedDB.open("secondline-results"));
  const runs = database.transaction("runs").objectStore("runs");
  const before = new Set(known);
  const fresh = ((await asked(runs.getAllKeys())) as string[]).filter((key) => !before.has(key));
  const entries = await Promise.all(fresh.map((key) => asked(runs.get(key) as IDBRequest<unknown>)));
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
  return fresh.flatMap((key, i) => {
    const text = written(entries[i]);
    return text === undefined ? [] : [`${key}\t${text}`];
  });
}
