/** The worker as the sandbox has it, but in Node. */
import { parentPort } from "node:worker_threads";
import nodeEndpoint from "comlink/dist/esm/node-adapter.mjs";
import { exposeRunner } from "../../src/index.ts";

exposeRunner(nodeEndpoint(parentPort!));
