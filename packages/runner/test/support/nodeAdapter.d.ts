/** Comlink ships this type beside a file of another name. */
declare module "comlink/dist/esm/node-adapter.mjs" {
  import type { MessagePort } from "node:worker_threads";
  import type { Endpoint } from "comlink";

  export default function nodeEndpoint(port: MessagePort): Endpoint;
}
