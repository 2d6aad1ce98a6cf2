/** A worker that dies of some events and never comes back from others. Bundled by the test. */
import { parentPort } from "node:worker_threads";
import { serveTasksInNode } from "../../src/node.ts";
import type { ToWorker } from "../../src/pool/messages.ts";
import { DEADLY, STUCK } from "./faultyEvents.ts";

parentPort!.on("message", (message: ToWorker) => {
  if (message.kind !== "task" || message.task.kind !== "order") return;
  const { at } = message.task.order.event;
  if (at === DEADLY) throw new Error("out of memory, say");
  if (at === STUCK) for (;;) Math.sqrt(2);
});
serveTasksInNode();
