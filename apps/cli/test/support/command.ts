/** Runs the bundled command line as a user would. */
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, inject } from "vitest";
import { bundleInto } from "./bundle.ts";

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

/** Path of the bundle's entry: the one that the command line's project makes for all its files, or one of this file's own. */
export async function bundle(language?: string): Promise<string> {
  const made = inject("secondlineEntry");
  return made !== undefined && language === undefined ? made : bundleInto(scratch(), language);
}

/**
 * Options of calls that make the same runs as others: each run is made once in all files of tests. That a kept result changes no answer
 * is a test of the runner's. In another project: kept for the file.
 */
export const KEPT: readonly string[] = ["--cache", inject("secondlineResults") ?? scratch()];

/** What runs the bundle. */
export async function command(language?: string): Promise<(...args: string[]) => Promise<Finished>> {
  const entry = await bundle(language);
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
