/** A worker whose service behaves as the name of the rig says. Bundled by the test, for Node's workers take no TypeScript. */
import { parentPort } from "node:worker_threads";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import { exposeRunner, type OrdersService, type RunnerService } from "../../src/index.ts";

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const cancelled = new Set<string>();

const service: RunnerService & OrdersService = {
  async run({ id, assessed: { rig } }, onProgress) {
    if (rig.name === "crash")
      setTimeout(() => {
        throw new Error("out of memory, say");
      }, 5);
    if (rig.name === "throw") throw new Error("a fault in the program");
    if (rig.name === "stuck") for (;;) Math.sqrt(2);
    if (rig.name === "endless" || rig.name === "crash") {
      for (let i = 0; !cancelled.has(id); i++) {
        onProgress?.({ done: (i % 100) / 100, step: "waiting" });
        await pause(2);
      }
      // A late answer: the page has gone on by now.
      await pause(20);
      return { ok: true, value: { outcome: { title: "late" } } } as never;
    }
    onProgress?.({ done: 0.5, step: "half" });
    const frames = new Float32Array(1000).fill(3);
    return { ok: true, value: { outcome: { title: rig.name }, recording: { frames } } } as never;
  },
  async study() {
    return { ok: false, reason: "failed", code: "failed", message: "no study here" };
  },
  async chances({ assessed: { rig } }, onProgress) {
    onProgress?.({ done: 0.25, step: "a quarter" });
    return { ok: true, value: { title: rig.name } } as never;
  },
  async orders({ orders }) {
    return { ok: true, value: orders.map(() => ({ ok: false }) as never) };
  },
  async sweep() {
    return { ok: true, value: { kind: "nothing" } };
  },
  async cancel(id) {
    cancelled.add(id);
  },
  async pause() {},
  async resume() {},
  async setJobs() {},
};

exposeRunner(nodeEndpoint(parentPort!), service);
