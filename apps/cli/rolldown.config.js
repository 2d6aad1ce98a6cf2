import { defineConfig } from "rolldown";
import { languagePlugin } from "../../scripts/language.mjs";
import { noticesPlugin } from "../../scripts/notices.mjs";
import { facesPlugin } from "./facesPlugin.mjs";

export default defineConfig({
  input: { cli: "src/cli.ts", worker: "src/worker.ts" },
  platform: "node",
  plugins: [languagePlugin(), noticesPlugin("apps/cli"), facesPlugin()],
  output: { dir: "dist", format: "esm", sourcemap: true, entryFileNames: "[name].js", cleanDir: true },
});
