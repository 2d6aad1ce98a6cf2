import { defineConfig } from "rolldown";

export default defineConfig({
  input: { cli: "src/cli.ts", worker: "src/worker.ts" },
  platform: "node",
  output: { dir: "dist", format: "esm", sourcemap: true, entryFileNames: "[name].js", cleanDir: true },
});
