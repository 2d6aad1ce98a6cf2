/** A worker of a pool as the command line has it. Bundled by the test, for Node's workers take no TypeScript. */
import { serveTasksInNode } from "../../src/node.ts";

serveTasksInNode();
