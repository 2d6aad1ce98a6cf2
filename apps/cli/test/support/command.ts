/** Bundles the command line as its build does, and runs it as a user would. */
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "rolldown";
import { afterAll } from "vitest";
// @ts-expect-error a plain script, shared with the page's build
import { languagePlugin } from "../../../../scripts/language.mjs";
import { facesPlugin } from "../../facesPlugin.mjs";

const root = fileURLToPath(new URL("../../", import.meta.url));
/** The repository's root, where demo-data is. */
export const repository = fileURLToPath(new URL("../../../../", import.meta.url));
export const demo = (name: string) => join(repository, "demo-data", name);
export const fixture = (name: string) => fileURLToPath(new URL(`../fixtures/${name}`, import.meta.url));

const made: string[] = [];
/** A folder of its own, gone when the test file has ended. */
export function scratch(): string {
  const folder = mkdtempSync(join(tmpdir(), "secondline-cli-"));
  made.push(folder);
  return folder;
}
afterAll(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

export interface Finished {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Bundling {
  /** With what makes runs on all cores. */
  readonly workers?: boolean;
  readonly language?: string;
}

/** Bundles the command line; returns the path of its entry. */
export async function bundle({ workers = false, language = "English" }: Bundling = {}): Promise<string> {
  const dir = scratch();
  await build({
    cwd: root,
    input: { cli: "src/cli.ts", ...(workers ? { worker: "src/worker.ts" } : {}) },
    platform: "node",
    plugins: [languagePlugin(language), facesPlugin()],
    logLevel: "silent",
    output: { dir, format: "esm", entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" },
  });
  return join(dir, "cli.mjs");
}

/** Bundles once per test file; returns what runs it. */
export async function command(options: Bundling = {}): Promise<(...args: string[]) => Promise<Finished>> {
  const entry = await bundle(options);
  return (...args) =>
    new Promise((resolve, reject) => {
      const child = spawn(process.execPath, [entry, ...args], { stdio: ["ignore", "pipe", "pipe"] });
      let [out, err] = ["", ""];
      child.stdout.on("data", (text) => {
        out += text;
      });
      child.stderr.on("data", (text) => {
        err += text;
      });
      child.on("error", reject);
      child.on("close", (status) => resolve({ status, out, err }));
    });
}
