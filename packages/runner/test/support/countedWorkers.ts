import type { SpawnWorker } from "../../src/index.ts";

/** Workers of which everything that they are asked is counted. */
export function counted(spawn: SpawnWorker) {
  const counts = { spawned: 0, assessed: 0, task: 0, cancel: 0, terminated: 0 };
  const counting: SpawnWorker = (listener) => {
    counts.spawned++;
    const worker = spawn(listener);
    return {
      post(message) {
        counts[message.kind]++;
        worker.post(message);
      },
      terminate() {
        counts.terminated++;
        worker.terminate();
      },
    };
  };
  return { counts, spawn: counting };
}
