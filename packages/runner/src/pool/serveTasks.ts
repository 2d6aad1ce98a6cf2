/** The side of a pool's worker. The worker file holds one line, `serveTasks(self)`. */
import { inSlices } from "../tasks/inSlices.ts";
import type { KnownRig } from "../tasks/known.ts";
import { keepFew, startTask, type Task } from "../tasks/task.ts";
import { ASSESSMENTS_KEPT, type FromWorker, type ToWorker } from "./messages.ts";
import { buffersOf } from "./transfer.ts";

/** A worker's global scope, or Node's `parentPort`. */
export interface WorkerPort {
  postMessage(message: unknown, transfer: ArrayBuffer[]): void;
  addEventListener(type: "message", listener: (event: { readonly data: unknown }) => void): void;
}

/** Does the tasks that arrive at `port`; returns a function that stops them all. */
export function serveTasks(port: WorkerPort): () => void {
  const known = new Map<string, KnownRig>();
  const running = new Map<number, AbortController>();
  const say = (message: FromWorker, transfer: ArrayBuffer[] = []) => port.postMessage(message, transfer);

  async function work(id: number, hash: string, task: Task): Promise<void> {
    const begun = performance.now();
    const stopper = new AbortController();
    running.set(id, stopper);
    const answer = await inSlices(() => startTask(known.get(hash)!, task), {
      signal: stopper.signal,
      onProgress: (progress) => say({ kind: "progress", id, progress }),
    });
    running.delete(id);
    say({ kind: "answer", id, answer, took: performance.now() - begun }, [...buffersOf(answer)]);
  }

  port.addEventListener("message", ({ data }) => {
    const message = data as ToWorker;
    switch (message.kind) {
      case "assessed":
        keepFew(known, message.hash, message.known, ASSESSMENTS_KEPT);
        return;
      case "task":
        void work(message.id, message.hash, message.task);
        return;
      case "cancel":
        running.get(message.id)?.abort();
        return;
    }
  });
  return () => {
    for (const stopper of running.values()) stopper.abort();
  };
}
