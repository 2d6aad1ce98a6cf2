import { defineConfig } from "rolldown";

export default defineConfig([
  {
    input: { bench: "src/bench.ts", bruteForce: "src/bruteForce/main.ts", runWorker: "src/runWorker.ts" },
    platform: "node",
    external: ["playwright-core", /scripts\/chrome\.mjs$/],
    output: { dir: "dist", format: "esm", entryFileNames: "[name].js" },
  },
  // Loaded as text into a worker of a browser page.
  {
    input: { worker: "src/worker.ts" },
    platform: "browser",
    output: { dir: "dist", format: "iife", entryFileNames: "[name].js" },
  },
]);
