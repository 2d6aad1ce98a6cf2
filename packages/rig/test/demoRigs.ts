/** The demonstration rigs, for tests over all of them. */
import { readFileSync } from "node:fs";
import { type RigDocument, type RigReading, readRig } from "../src/index.ts";

export const DEMO_NAMES = ["sound-rig", "loose-backup", "old-rig"] as const;
export type DemoName = (typeof DEMO_NAMES)[number];

export function demoText(name: DemoName): string {
  return readFileSync(new URL(`../../../demo-data/${name}.json`, import.meta.url), "utf8");
}

export function demoDocument(name: DemoName): RigDocument {
  return JSON.parse(demoText(name));
}

export function accepted(reading: RigReading): Extract<RigReading, { ok: true }> {
  if (!reading.ok)
    throw new Error(`refused: ${reading.issues.map((i) => `${i.path}: ${JSON.stringify(i.message)}`).join("\n")}`);
  return reading;
}

/** Paths of the issues; none when the rig is accepted. */
export function issuePaths(document: unknown): string[] {
  const reading = readRig(document);
  return reading.ok ? [] : reading.issues.map((issue) => issue.path);
}
