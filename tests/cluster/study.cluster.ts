import { spawn, spawnSync } from "node:child_process";
import {
  appendFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { missing, searchPath } from "./packages.ts";
import { type Slurm, startSlurm } from "./slurm.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const cli = here("../../apps/cli/dist/cli.js");
const plan = here("data/plan.json");
const folders: string[] = [];
function scratch(): string {
  const folder = mkdtempSync(join(tmpdir(), "secondline-study-"));
  folders.push(folder);
  return folder;
}
afterAll(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

const call = (...args: string[]) => spawnSync(process.execPath, [cli, "study", ...args], { encoding: "utf8" });
function made(...args: string[]): void {
  const { status, stderr } = call(...args);
  expect(stderr, args.join(" ")).not.toContain("secondline:");
  expect(status, stderr).toBe(0);
}
function merged(...folders: string[]): string {
  const file = join(scratch(), "merged.jsonl");
  made("merge", ...folders, "--out", file);
  return readFileSync(file, "utf8");
}

const numbers = (folder: string): number[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".jsonl"))
    .flatMap((name) => readFileSync(join(folder, name), "utf8").trimEnd().split("\n").slice(1))
    .map((line) => JSON.parse(line).run);

const KILLS = 20;
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

let whole: string;
let runs: number;
beforeAll(() => {
  expect(existsSync(cli), "build first: npm run build").toBe(true);
  const folder = scratch();
  made(plan, "--out", folder, "--jobs", "1");
  whole = merged(folder);
  runs = JSON.parse(whole.split("\n")[0]!).runs;
});

describe("a study in one program", () => {
  it.each([2, 4])("gives the same file, to the byte, with %d workers", (jobs) => {
    const folder = scratch();
    made(plan, "--out", folder, "--jobs", String(jobs));
    expect(merged(folder) === whole).toBe(true);
  });

  it("gives it in three shards, each in a folder of its own, merged in any order", () => {
    const folders = [1, 2, 3].map((index) => {
      const folder = scratch();
      made(plan, "--out", folder, "--shard", `${index}/3`);
      return folder;
    });
    expect(merged(...folders) === whole).toBe(true);
    expect(merged(...folders.toReversed()) === whole).toBe(true);
  });

  it("killed twenty times at random moments goes on each time, with nothing lost and nothing twice", async () => {
    const folder = scratch();
    let random = 12_345;
    let before = 0;
    const seen: number[] = [];
    while (seen.length < KILLS) {
      random = (random * 1_103_515_245 + 12_345) % 2 ** 31;
      const child = spawn(process.execPath, [cli, "study", plan, "--out", folder, "--jobs", "2"], { stdio: "ignore" });
      let over = false;
      const ended = new Promise<void>((resolve) => {
        child.once("exit", () => {
          over = true;
          resolve();
        });
      });
      // Every fifth while it starts, the others at some moment after a first line of theirs.
      if (seen.length % 5 === 4) await wait(100 + (random % 800));
      else {
        while (!over && wholeLines(folder) <= before) await wait(5);
        await wait(random % 250);
      }
      child.kill("SIGKILL");
      await ended;
      const done = wholeLines(folder);
      expect(done).toBeGreaterThanOrEqual(before);
      before = done;
      seen.push(done);
    }
    made(plan, "--out", folder, "--jobs", "2");
    console.log(`runs there after each kill: ${seen.join(" ")}; then ${runs}`);
    // Most of the kills met it at work.
    expect(seen[0]).toBeGreaterThan(0);
    expect(seen.at(-2)).toBeGreaterThan(10);
    expect(numbers(folder).sort((a, b) => a - b)).toEqual(Array.from({ length: runs }, (_, i) => i));
    expect(merged(folder) === whole).toBe(true);
  });

  it("drops a torn last line, and makes that run again", () => {
    const folder = scratch();
    const file = join(folder, "runs-1-of-1.jsonl");
    const text = whole.split("\n").slice(0, 9).join("\n");
    for (const torn of ["", '{"run":8,"rig":"Sh', "\0\0\0\0"]) {
      writeFileSync(file, `${text}\n`);
      appendFileSync(file, torn);
      const { status, stderr } = call(plan, "--out", folder);
      expect(status, stderr).toBe(0);
      expect(stderr.includes("torn")).toBe(torn !== "");
      expect(merged(folder) === whole).toBe(true);
    }
    // Torn within its head.
    truncateSync(file, 40);
    expect(call(plan, "--out", folder).status).toBe(0);
    expect(merged(folder) === whole).toBe(true);
  });
});

const noParallel = missing(["parallel"], ["parallel"]);
if (noParallel) console.log(noParallel);
describe.skipIf(noParallel)("GNU parallel", () => {
  it("makes the same file as one program", () => {
    const folder = scratch();
    const env = { ...process.env, PATH: searchPath, JOBS: "2", SECONDLINE: `${process.execPath} ${cli}` };
    const { status, stderr } = spawnSync("sh", [here("../../docs/cluster/parallel.sh"), plan, folder, "5"], {
      env,
      encoding: "utf8",
    });
    expect(status, stderr).toBe(0);
    expect(readFileSync(join(folder, "merged.jsonl"), "utf8") === whole).toBe(true);
    expect(readdirSync(folder).filter((name) => name.startsWith("runs-"))).toHaveLength(5);
  });
});

const noSlurm =
  missing(["sbatch", "slurmctld", "slurmd", "munged"], ["slurm-wlm", "munge"]) ??
  (process.getuid?.() === 0 ? undefined : "SKIPPED: Slurm's daemons are started as root here.");
if (noSlurm) console.log(noSlurm);
describe.skipIf(noSlurm)("a Slurm of two nodes", () => {
  let slurm: Slurm;
  beforeAll(async () => {
    slurm = await startSlurm();
  });
  afterAll(() => slurm?.stop());

  it("makes the same file as one program, by an array of four", () => {
    const folder = scratch();
    const env = { ...slurm.env, PLAN: plan, FOLDER: folder, SHARDS: "4", SECONDLINE: `${process.execPath} ${cli}` };
    const log = join(folder, "task-%a.log");
    const args = [
      "--wait",
      "--array=1-4",
      `--output=${log}`,
      "--export=ALL",
      here("../../docs/cluster/slurm-array.sh"),
    ];
    const { status, stderr } = spawnSync("sbatch", args, { env, encoding: "utf8", cwd: folder });
    const logs = readdirSync(folder).filter((name) => name.endsWith(".log"));
    expect(status, stderr + logs.map((name) => readFileSync(join(folder, name), "utf8")).join("\n")).toBe(0);
    expect(merged(folder) === whole).toBe(true);
  });
});

/** Whole lines besides the head. */
function wholeLines(folder: string): number {
  const file = join(folder, "runs-1-of-1.jsonl");
  return existsSync(file) ? Math.max(0, readFileSync(file, "utf8").split("\n").length - 2) : 0;
}
