/** The parts of the runner for Node alone. */
export { nodeWorkers, serveTasksInNode } from "./pool/nodeWorker.ts";
export { type FolderResultsOptions, folderResults } from "./results/folderResults.ts";
