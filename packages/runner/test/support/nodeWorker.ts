/** Bundles a worker, and dresses a Node worker as a browser's. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { build } from "vite";
import { afterAll } from "vitest";
import type { RunnerWorker } from "../../src/index.ts";

const made: string[] = [];
afterAll(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** Path of the bundle of `support/<name>.ts`, which is gone when the test file has ended. */
export async function bundleWorker(name: string): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), "secondline-worker-"));
  made.push(outDir);
  await build({
    configFile: false,
    logLevel: "error",
    build: {
      outDir,
      minify: false,
      ssr: fileURLToPath(new URL(`./${name}.ts`, import.meta.url)),
      rolldownOptions: { output: { entryFileNames: "worker.mjs", codeSplitting: false } },
    },
    ssr: { noExternal: true },
  });
  return join(outDir, "worker.mjs");
}

type Listener = (event: unknown) => void;

export class NodeWorker implements RunnerWorker {
  readonly #worker: Worker;
  readonly #listeners = new Map<Listener, Listener>();
  terminated = false;

  constructor(path: string) {
    this.#worker = new Worker(path);
  }
  postMessage(message: unknown, transfer: Transferable[] = []): void {
    this.#worker.postMessage(message, transfer as never);
  }
  addEventListener(type: string, listener: unknown): void {
    const heard: Listener = type === "message" ? (data) => (listener as Listener)({ data }) : (listener as Listener);
    this.#listeners.set(listener as Listener, heard);
    this.#worker.on(type, heard);
  }
  removeEventListener(type: string, listener: unknown): void {
    this.#worker.off(type, this.#listeners.get(listener as Listener)!);
  }
  terminate(): Promise<number> {
    this.terminated = true;
    return this.#worker.terminate();
  }
}
