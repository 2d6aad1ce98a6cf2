// Writes schema/rig.schema.json from the document's schema; with --check, fails when the committed file is stale.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { rolldown } from "rolldown";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const target = here("../schema/rig.schema.json");
// Node 20 does not run TypeScript, so the few modules that are needed are bundled first.
const built = here("../dist-types/jsonSchema.mjs");
const bundle = await rolldown({ input: here("../src/jsonSchema.ts"), platform: "node", logLevel: "silent" });
await bundle.write({ file: built, format: "esm" });
await bundle.close();
const { rigJsonSchema } = await import(pathToFileURL(built).href);
rmSync(built);
const text = `${JSON.stringify(rigJsonSchema(), null, 2)}\n`;
if (process.argv.includes("--check")) {
  if (!existsSync(target) || readFileSync(target, "utf8") !== text) {
    console.error("packages/rig/schema/rig.schema.json is stale: npm run schema -w packages/rig");
    process.exit(1);
  }
  console.log("rig.schema.json is up to date");
} else {
  mkdirSync(here("../schema"), { recursive: true });
  writeFileSync(target, text);
  console.log("rig.schema.json written");
}
