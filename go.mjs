#!/usr/bin/env node
// The launcher: needs nothing but Node, and sets up what the rest needs.
//   node go.mjs start        verdict of the demo rig in the terminal, then the sandbox on a local port
//   node go.mjs demo         the verdict only
//   node go.mjs test         all tests, browser ones included
//   node go.mjs test-long    the tests that take minutes (*.long.ts)
//   node go.mjs test-cluster studies on GNU parallel and Slurm, and killed at random moments
//   node go.mjs secondline … the command line
//   node go.mjs bench        the benches
//   node go.mjs brute-force  searches held against brute force: for machines of many cores
//   node go.mjs screenshots  pictures of every view of the sandbox
//   node go.mjs check        lint, type check, unused code, and the tests of packages that make no whole runs
//   node go.mjs ci           lint, type check, unused code, build, all tests
import { spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL(".", import.meta.url));
const [major, minor] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`Secondline needs Node 20.19 or newer; this is ${process.version}.`);
  process.exit(1);
}
const env = { ...process.env, TURBO_TELEMETRY_DISABLED: "1", DO_NOT_TRACK: "1" };
const windows = process.platform === "win32";

/** Runs a program to its end; leaves with its exit code when it fails. */
function run(command, args, options = {}) {
  const done = spawnSync(command, args, { cwd: root, stdio: ["ignore", 2, 2], env, shell: windows, ...options });
  if (done.error) console.error(`${command}: ${done.error.message}`);
  if (done.status !== 0) process.exit(done.status ?? 1);
}
const node = (args, options = {}) => run(process.execPath, args, { shell: false, ...options });
const tool = (path) => `${root}node_modules/${path}`;
const turbo = tool(`.bin/turbo${windows ? ".cmd" : ""}`);
const BUILD = ["run", "build", "--output-logs=errors-only"];

/** Installs when node_modules is missing or was made from another lock file. */
function install() {
  const mark = tool(".installed-from");
  const lock = createHash("sha256")
    .update(readFileSync(`${root}package-lock.json`))
    .digest("hex");
  if (existsSync(mark) && readFileSync(mark, "utf8") === lock) return;
  console.error("Installing what Secondline needs (once) …");
  run("npm", ["ci", "--no-audit", "--no-fund"]);
  writeFileSync(mark, lock);
}

/** Builds what is stale; quiet when nothing is. */
function build() {
  run(turbo, BUILD);
}

/**
 * All tests, then the closing line. `faults` is what failed before them (lint, types, build) and counts as failed. `options` go to Vitest.
 * Leaves with 1 when anything failed or nothing ran.
 */
function test(faults = 0, options = []) {
  const results = `${root}test-results.json`;
  rmSync(results, { force: true });
  const report = ["--reporter=default", "--reporter=json", `--outputFile.json=${results}`];
  const done = spawnSync(process.execPath, [tool("vitest/vitest.mjs"), "run", ...options, ...report, ...rest], {
    cwd: root,
    stdio: ["ignore", "inherit", "inherit"],
    env,
  });
  const count = existsSync(results)
    ? JSON.parse(readFileSync(results, "utf8"))
    : { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 };
  // A test file that does not load, or a run that ends early, fails without a failed test.
  const unseen = count.numFailedTests === 0 && done.status !== 0 ? 1 : 0;
  const failed = count.numFailedTests + unseen + faults;
  const skipped = count.numPendingTests + count.numTodoTests;
  console.log(`${count.numPassedTests} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
  process.exit(failed > 0 || count.numPassedTests === 0 ? 1 : 0);
}

/** Runs a check of the code beside others, and says what it has to say when it has ended: 1 when it failed, 0 when not. */
function fault(name, command, args) {
  const child = spawn(command, args, {
    cwd: root,
    stdio: ["ignore", "pipe", "pipe"],
    env,
    shell: windows && command.endsWith(".cmd"),
  });
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on("data", (text) => said.push(text));
  child.on("error", (error) => said.push(Buffer.from(`${error.message}\n`)));
  return new Promise((resolve) => {
    child.on("close", (status) => {
      process.stderr.write(Buffer.concat(said));
      if (status !== 0) console.error(`${name} failed`);
      resolve(status === 0 ? 0 : 1);
    });
  });
}

/** What reads the code and runs none of it, side by side. `afterTypes`: what writes the same files as the type check. */
async function readingFaults(afterTypes = async () => 0) {
  const types = () => fault("type check", process.execPath, [tool("typescript/bin/tsc"), "-b"]);
  const faults = await Promise.all([
    fault("lint", process.execPath, [tool("@biomejs/biome/bin/biome"), "check", "."]),
    fault("search for unused code", process.execPath, [tool("knip/bin/knip.js")]),
    types().then(async (failed) => failed + (await afterTypes())),
  ]);
  return faults.reduce((sum, one) => sum + one, 0);
}

/**
 * Packages of which every test takes moments: they make no whole runs. Left to `npm test`: scenarios, runner, command line, sandbox,
 * the checks across packages, and the browser.
 */
const QUICK_PACKAGES = ["engine", "statistics", "rig", "strength", "words", "figures", "report", "workbench"];

async function browser() {
  const { ensureChrome } = await import("./scripts/chrome.mjs");
  env.CHROME_PATH = ensureChrome();
}

const demo = () =>
  node([`${root}apps/cli/dist/cli.js`, "check", `${root}demo-data/sound-rig.json`], { stdio: "inherit" });

const MODES = "start, demo, check, test, test-long, test-cluster, secondline, bench, brute-force, screenshots or ci";
const [mode = "start", ...rest] = process.argv.slice(2);
install();
switch (mode) {
  case "start": {
    build();
    demo();
    const serve = [tool("vite/bin/vite.js"), "preview", `${root}apps/sandbox`, ...rest];
    const server = spawn(process.execPath, serve, { cwd: root, stdio: "inherit", env });
    for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
    server.on("exit", (code) => process.exit(code ?? 0));
    break;
  }
  case "demo":
    build();
    demo();
    break;
  case "secondline": {
    build();
    // Paths are the user's: they count from where the command was typed.
    const done = spawnSync(process.execPath, [`${root}apps/cli/dist/cli.js`, ...rest], {
      cwd: process.env.INIT_CWD ?? process.cwd(),
      stdio: "inherit",
      env,
    });
    process.exit(done.status ?? 1);
    break;
  }
  case "check":
    test(await readingFaults(), ["--project=packages", ...QUICK_PACKAGES.map((name) => `packages/${name}/`)]);
    break;
  case "test":
    build();
    await browser();
    test();
    break;
  case "test-long":
    test(0, ["--config", `${root}vitest.long.config.ts`]);
    break;
  case "test-cluster":
    build();
    test(0, ["--config", `${root}vitest.cluster.config.ts`]);
    break;
  case "ci": {
    const faults = await readingFaults(() => fault("build", turbo, BUILD));
    await browser();
    test(faults);
    break;
  }
  case "bench":
    build();
    await browser();
    node([`${root}bench/dist/bench.js`, ...rest], { stdio: "inherit" });
    break;
  case "brute-force":
    build();
    node([`${root}bench/dist/bruteForce.js`, ...rest], { stdio: "inherit" });
    break;
  case "screenshots":
    build();
    await browser();
    node([`${root}scripts/screenshots.mjs`, ...rest], { stdio: "inherit" });
    break;
  default:
    console.error(`go.mjs: there is no "${mode}"; use ${MODES}.`);
    process.exit(2);
}
