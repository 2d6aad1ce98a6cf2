// Writes the record of what the checks against outside sources find, then the pages that are made from it.
// With --long, the ensembles of whole falls as well (minutes).
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const vitest = `${root}node_modules/vitest/vitest.mjs`;
function run(...args) {
  const env = { ...process.env, SECONDLINE_EVIDENCE: "write" };
  const done = spawnSync(process.execPath, [vitest, "run", ...args], { cwd: root, stdio: "inherit", env });
  if (done.status !== 0) process.exit(done.status ?? 1);
}
run("--project", "packages", "tests/published", "tests/reference");
if (process.argv.includes("--long")) run("--config", "vitest.long.config.ts", "tests/ensembles");
run("--project", "packages", "tests/evidence");
