/** What the runner has for Node alone. */
export { nodeWorkers, serveTasksInNode } from "./pool/nodeWorker.ts";
