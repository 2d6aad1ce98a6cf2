import { readFileSync } from "node:fs";
import { type Rig, readRig } from "@secondline/rig";
import { expect, it } from "vitest";
import { parseWhatIf } from "../src/events/registry.ts";
import type { GoodRun } from "../src/facts/runFacts.ts";
import { runAfterBefore } from "../src/run/runAfterBefore.ts";
import { NO_DRAW } from "../src/scatter/draw.ts";
import { rigStrengths } from "../src/strengths/rigStrengths.ts";

function demoRig(name: string): Rig {
  const reading = readRig(readFileSync(new URL(`../../../demo-data/${name}.json`, import.meta.url), "utf8"));
  if (!reading.ok) throw new Error("a demo rig does not read");
  return reading.rig;
}

function run(rig: Rig, key: string): GoodRun {
  const work = runAfterBefore(rig, rigStrengths(rig), { event: parseWhatIf(key)!, draw: NO_DRAW, accuracy: "quick" });
  let step = work.next();
  while (!step.done) step = work.next();
  if (!step.value.ok) throw new Error(`no run of ${key}: ${step.value.trouble.reason}`);
  return step.value;
}

// On the mesh that the weak place makes, this backup gets less there than it did before, and held when it was made weak by that.
it("gives way also where the weak place's own mesh loads it less than the run before did", () => {
  const rig = demoRig("loose-backup");
  const during = "fails@0,hanging@0.0577";
  expect(run(rig, during).caughtBy).toBe("backup");
  expect(run(rig, `gives@backup:0.21/${during}`).caughtBy).not.toBe("backup");
});
