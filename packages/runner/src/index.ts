export { exposeRunner } from "./exposed.ts";
export { InProcessRunner } from "./inProcess.ts";
export type * from "./service.ts";
export { createWorkerRunner, type RunnerWorker, type WorkerRunner } from "./workerRunner.ts";
