/** The old demonstration rig and its wear record, for tests of its teardown. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Rig, readRig } from "@secondline/rig";
import { planTeardown, readWearRecord, type Teardown, type WearRecord } from "../src/index.ts";

export const demo = (name: string) =>
  readFileSync(fileURLToPath(new URL(`../../../demo-data/${name}`, import.meta.url)), "utf8");
export const DATE = "2026-11-10";

export function demoRig(): Rig {
  const reading = readRig(demo("old-rig.json"));
  if (!reading.ok) throw new Error("the demonstration rig is not sound");
  return reading.rig;
}

export function recordOf(document: unknown): WearRecord {
  const reading = readWearRecord(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.record;
}

export function planned(rig: Rig, record: WearRecord, pulls: number, on = DATE): Teardown {
  const reading = planTeardown({ rig, record, on, pulls });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issue));
  return reading.teardown;
}
