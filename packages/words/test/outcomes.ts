/** Outcomes to speak of: one that is computed, and facts put together by hand. */
import { readFileSync } from "node:fs";
import { type PartId, type Rig, readRig } from "@secondline/rig";
import {
  assess,
  type Outcome,
  type PartJudgement,
  parseWhatIf,
  type SearchOptions,
  study,
  type WhatIfOutcome,
} from "@secondline/scenarios";

const folder = new URL("../../../demo-data/", import.meta.url);

export function demoRig(name: string): Rig {
  const reading = readRig(readFileSync(new URL(name, folder), "utf8"));
  if (!reading.ok) throw new Error(`${name} is not readable`);
  return reading.rig;
}

const FEW = ["fall@0.5", "fails@0,hanging@0.5", "fails@1,standing@0.5", "leg@A1,caught@0.5"];

/** A few what-ifs on the quick mesh. */
export function quickOutcome(
  rig: Rig,
  options: Partial<SearchOptions> = {},
  judgements: readonly PartJudgement[] = [],
) {
  const reading = assess({ rig, judgements });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  const whatIfs = FEW.map((key) => parseWhatIf(key)!);
  const work = study(reading.assessed, { accuracy: "quick", whatIfs, ...options });
  let step = work.next();
  while (!step.done) step = work.next();
  return { rig: reading.assessed.rig, outcome: step.value.outcome };
}

/** One run by hand. */
export function run(key: string, facts: Partial<WhatIfOutcome>): WhatIfOutcome {
  const whatIf = parseWhatIf(key);
  if (!whatIf) throw new Error(`${key} is no what-if`);
  return {
    whatIf,
    key,
    class: whatIf.kind === "leashFall" ? "expected" : "afterFailure",
    ok: true,
    peaks: { leash: 3310, mainA: 5000, mainB: 5000, backupA: 7100, backupB: 7000 },
    drop: 5.48,
    caughtBy: "main",
    gaveWay: [],
    counts: true,
    runs: 1,
    ...facts,
  };
}

export const gone = (part: PartId, time = 1.45) => ({ part, time });

/** The same outcome with other facts. */
export const changed = (outcome: Outcome, facts: Partial<Outcome>): Outcome => ({ ...outcome, ...facts });
