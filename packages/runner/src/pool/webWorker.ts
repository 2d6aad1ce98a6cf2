/** A browser's worker as the pool sees it. */
import type { FromWorker, SpawnWorker } from "./messages.ts";

/** `webWorkers(() => new Worker(url, { type: "module" }))` */
export function webWorkers(make: () => Worker): SpawnWorker {
  return (listener) => {
    const worker = make();
    worker.addEventListener("message", ({ data }) => listener.heard(data as FromWorker));
    worker.addEventListener("error", (event) => {
      // It is dealt with here: a worker that dies is replaced.
      event.preventDefault();
      listener.lost(event.message);
    });
    worker.addEventListener("messageerror", () => listener.lost("a message could not be read"));
    return { post: (message) => worker.postMessage(message), terminate: () => worker.terminate() };
  };
}
