/** Once for all files of tests: the bundle, and a folder for the results of runs, which are kept from one call of it to the next. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { bundleInto } from "./bundle.ts";

declare module "vitest" {
  interface ProvidedContext {
    readonly secondlineEntry?: string;
    readonly secondlineResults?: string;
  }
}

export async function setup(project: TestProject): Promise<() => void> {
  const folder = mkdtempSync(join(tmpdir(), "secondline-cli-"));
  project.provide("secondlineEntry", await bundleInto(join(folder, "bundle")));
  project.provide("secondlineResults", join(folder, "results"));
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
