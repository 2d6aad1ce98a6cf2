/** Whole assessments, as a user waits for them: by a pool of fresh threads, with nothing kept from before. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readRig } from "@secondline/rig";
import { memoryResults, PoolRunner } from "@secondline/runner";
import { nodeWorkers } from "@secondline/runner/node";
import {
  type Assessed,
  assess,
  executeRun,
  type Outcome,
  readKnob,
  rigStrengths,
  sweep,
  sweepPoints,
  type WhatIf,
  whatIfSet,
} from "@secondline/scenarios";
import { readWearRecord } from "@secondline/strength";

export const demo = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../demo-data/${name}.json`, import.meta.url), "utf8"));

/** A demo rig by the name of its file, with a wear record and its day where there is one. */
export interface DemoRig {
  readonly name: string;
  readonly document: unknown;
  readonly assessed: Assessed;
}

export function demoRig(name: string, wear?: { readonly file: string; readonly on: string }): DemoRig {
  const document = demo(name);
  const read = readRig(document);
  if (!read.ok) throw new Error(`${name}: ${read.issues[0]?.message}`);
  const record = wear && readWearRecord(demo(wear.file));
  if (record && !record.ok) throw new Error(`${wear.file}: ${record.issues[0]?.message}`);
  const known = record?.ok ? { wear: record.record, on: wear!.on } : {};
  const assessment = assess({ rig: read.rig, ...known });
  if (!assessment.ok) throw new Error(`${name}: ${assessment.issues[0]?.message}`);
  return { name, document, assessed: assessment.assessed };
}

const worker = fileURLToPath(new URL("./runWorker.js", import.meta.url));

export async function withPool<T>(jobs: number, work: (runner: PoolRunner) => Promise<T>): Promise<T> {
  const runner = new PoolRunner({ spawn: nodeWorkers(worker), jobs, results: memoryResults() });
  try {
    return await work(runner);
  } finally {
    runner.dispose();
  }
}

export interface AssessmentTimes {
  readonly verdict: Outcome["verdict"];
  readonly runs: number;
  /** The whole search, threads started included [ms]. */
  readonly whole: number;
  /** Until the search was first certain that the rig fails [ms]; absent where it never was before its end. */
  readonly fails?: number;
}

/** The whole set of what-ifs, or the few that usually govern. */
export type Size = "full" | "quick";

export function timeAssessment({ assessed }: DemoRig, jobs: number, size: Size): Promise<AssessmentTimes> {
  return withPool(jobs, async (runner) => {
    const begun = performance.now();
    let fails: number | undefined;
    const asked = { id: "bench", assessed, accuracy: "standard", size, tellSoFar: true } as const;
    const answer = await runner.study(asked, ({ soFar }) => {
      if (soFar?.verdict === "fails") fails ??= performance.now() - begun;
    });
    if (!answer.ok) throw new Error(answer.message);
    const { verdict, search } = answer.value.outcome;
    const whole = performance.now() - begun;
    return { verdict, runs: search.runs, whole, ...(fails === undefined ? {} : { fails }) };
  });
}

/** A sweep of the backup's slack from 2 to 14 %: how many runs, and how long [ms]. */
export function timeSweep({ document, assessed }: DemoRig, count: number, jobs: number, size: Size) {
  const reading = readKnob("backup.slack=2%..14%", { document, rig: assessed.rig, dated: false });
  if (!reading.ok) throw new Error(`the range: ${reading.fault.kind}`);
  const knobs = [reading.knob];
  return withPool(jobs, async (runner) => {
    const begun = performance.now();
    const points = sweepPoints({ document, known: {}, knobs, counts: [count] });
    const work = sweep(points, knobs, { what: { kind: "margin" }, accuracy: "standard", size });
    let runs = 0;
    let step = work.next();
    while (!step.done) {
      const { orders } = step.value;
      runs += orders.length;
      const answer = await runner.orders({ id: "bench", orders });
      if (!answer.ok) throw new Error(answer.message);
      step = work.next(answer.value);
    }
    return { runs, points: points.points.length, whole: performance.now() - begun };
  });
}

/** The runs of a demo rig's set that need no other run before them, one after the other in this thread: mean time of one [ms]. */
export function timeRuns({ assessed: { rig, tests } }: DemoRig, most: number) {
  const strengths = rigStrengths(rig, tests);
  const set = whatIfSet({ rig, weakPlaces: strengths.weakPlaces, size: "full" });
  const alone = (event: WhatIf) => !("walker" in event && event.walker === "caught");
  const events = set.filter(alone).slice(0, most);
  const begun = performance.now();
  for (const event of events) {
    const work = executeRun(rig, strengths, { event, draw: {}, accuracy: "standard" });
    let step = work.next();
    while (!step.done) step = work.next();
    if (!step.value.ok) throw new Error(`a run of ${rig.name} gave no numbers: ${step.value.trouble.reason}`);
  }
  return { runs: events.length, each: (performance.now() - begun) / events.length };
}
