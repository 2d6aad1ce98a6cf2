/** Node's worker threads as workers of the pool. */
import { parentPort, Worker } from "node:worker_threads";
import type { SpawnWorker } from "./messages.ts";
import { serveTasks, type WorkerPort } from "./serveTasks.ts";

/** Workers that run the bundle at `file`, which calls `serveTasksInNode()`. An idle one does not keep the program from ending. */
export function nodeWorkers(file: string | URL): SpawnWorker {
  return (listener) => {
    const worker = new Worker(file);
    worker.on("message", (message) => {
      if (message.kind === "answer") worker.unref();
      listener.heard(message);
    });
    worker.on("error", (error) => listener.lost(error instanceof Error ? error.message : String(error)));
    worker.on("messageerror", () => listener.lost("a message could not be read"));
    worker.on("exit", (code) => listener.lost(`it ended with code ${code}`));
    // Comes after the listeners, which keep the program alive. Else a worker that has an assessment and no task would be waited
    // for without end.
    worker.unref();
    return {
      post(message) {
        if (message.kind === "task") worker.ref();
        worker.postMessage(message);
      },
      terminate: () => void worker.terminate(),
    };
  };
}

/** The whole of a worker file for Node. */
export function serveTasksInNode(): void {
  if (!parentPort) throw new Error("This file is a worker: it does nothing by itself.");
  serveTasks(parentPort as unknown as WorkerPort);
}
