/** A browser's worker as a worker of the pool. */
import type { FromWorker, SpawnWorker } from "./messages.ts";

/** `webWorkers(() => new Worker(url, { type: "module" }))` */
export function webWorkers(make: () => Worker): SpawnWorker {
  return (listener) => {
    const worker = make();
    worker.addEventListener("message", ({ data }) => listener.heard(data as FromWorker));
    worker.addEventListener("error", (event) => {
      // Keeps the browser from reporting the error: the pool replaces a worker that dies.
      event.preventDefault();
      listener.lost(event.message);
    });
    worker.addEventListener("messageerror", () => listener.lost("a message could not be read"));
    return { post: (message) => worker.postMessage(message), terminate: () => worker.terminate() };
  };
}
