/** A browser's worker as the pool sees it. */
import type { FromWorker, SpawnWorker } from "./messages.ts";

/** Of a browser's `Worker` what is needed. */
export interface BrowserWorker {
  postMessage(message: unknown): void;
  addEventListener(type: "message" | "messageerror" | "error", listener: (event: never) => void): void;
  terminate(): void;
}

/** `webWorkers(() => new Worker(url, { type: "module" }))` */
export function webWorkers(make: () => BrowserWorker): SpawnWorker {
  return (listener) => {
    const worker = make();
    worker.addEventListener("message", ({ data }: { readonly data: FromWorker }) => listener.heard(data));
    worker.addEventListener("error", (event: { readonly message?: string; preventDefault?: () => void }) => {
      // It is dealt with here: a worker that dies is replaced.
      event.preventDefault?.();
      listener.lost(event.message ?? "");
    });
    worker.addEventListener("messageerror", () => listener.lost("a message could not be read"));
    return { post: (message) => worker.postMessage(message), terminate: () => worker.terminate() };
  };
}
