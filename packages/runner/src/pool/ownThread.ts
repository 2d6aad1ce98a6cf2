/** A "worker" in the caller's own thread: works in slices, and copies nothing. */
import type { FromWorker, SpawnWorker, ToWorker } from "./messages.ts";
import { serveTasks } from "./serveTasks.ts";

export const ownThread: SpawnWorker = (listener) => {
  let hear: (message: ToWorker) => void = () => undefined;
  let ended = false;
  const stop = serveTasks({
    postMessage(message) {
      // Delivers the message later, as another thread would: the receiver may not expect it while still sending.
      queueMicrotask(() => {
        if (!ended) listener.heard(message as FromWorker);
      });
    },
    addEventListener(_, heard) {
      hear = (data) => heard({ data });
    },
  });
  return {
    post: (message) => hear(message),
    terminate() {
      ended = true;
      stop();
    },
  };
};
