/** Bundles the command line as its build does. */
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "rolldown";
// @ts-expect-error a plain script, shared with the page's build
import { languagePlugin } from "../../../../scripts/language.mjs";
import { facesPlugin } from "../../facesPlugin.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** Into a folder; returns the path of its entry. */
export async function bundleInto(dir: string, language = "English"): Promise<string> {
  await build({
    cwd: root,
    input: { cli: "src/cli.ts", worker: "src/worker.ts" },
    platform: "node",
    plugins: [languagePlugin(language), facesPlugin()],
    logLevel: "silent",
    output: { dir, format: "esm", entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" },
  });
  return join(dir, "cli.mjs");
}
