// Writes the table of constants into DERATING.md; with --check, fails when the committed page is stale.
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { rolldown } from "rolldown";

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const target = here("../DERATING.md");
// Node 20 does not run TypeScript, so the table is bundled first.
const built = here("../dist-types/constants.mjs");
const bundle = await rolldown({ input: here("../src/derating/constants.ts"), platform: "node", logLevel: "silent" });
await bundle.write({ file: built, format: "esm" });
await bundle.close();
const { constantsMarkdown } = await import(pathToFileURL(built).href);
rmSync(built);

const [START, END] = ["<!-- constants: start -->", "<!-- constants: end -->"];
const page = readFileSync(target, "utf8");
const [from, to] = [page.indexOf(START), page.indexOf(END)];
if (from < 0 || to < from)
  throw new Error(`packages/strength/DERATING.md has no place for the table: ${START} … ${END}`);
const text = `${page.slice(0, from + START.length)}\n\n${constantsMarkdown()}\n\n${page.slice(to)}`;
if (process.argv.includes("--check")) {
  if (page !== text) {
    console.error("packages/strength/DERATING.md is stale: npm run derating -w packages/strength");
    process.exit(1);
  }
  console.log("DERATING.md is up to date");
} else {
  writeFileSync(target, text);
  console.log("DERATING.md written");
}
