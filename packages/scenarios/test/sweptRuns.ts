/** Drives a sweep of the sound demo rig with results that are made up: no run is made. */
import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import {
  type Knob,
  type RunOrder,
  type RunResult,
  readKnob,
  type SweepOptions,
  type SweepPoints,
  type Swept,
  sweep,
  sweepPoints,
} from "../src/index.ts";
import { type MadeUp, madeUpRun } from "./madeUpRuns.ts";

export const text = readFileSync(new URL("../../../demo-data/sound-rig.json", import.meta.url), "utf8");
const reading = readRig(text);
if (!reading.ok) throw new Error("the demo rig is none");
export const { rig, document } = reading;
export const context = { rig, document, dated: false };

export const knobOf = (asked: string, from = context): Knob => {
  const found = readKnob(asked, from);
  if (!found.ok) throw new Error(found.fault.kind);
  return found.knob;
};
export const pointsOver = (asked: readonly string[], count: number, from: unknown = document): SweepPoints => {
  const knobs = asked.map((one) => knobOf(one, { ...context, dated: true }));
  return sweepPoints({ document: from, known: { on: "2026-07-01" }, knobs, counts: knobs.map(() => count) });
};

/** Answers every order by what is made up; `value` tells the point's value in the knob's unit. */
export function swept(
  found: SweepPoints,
  knobs: readonly Knob[],
  options: Omit<SweepOptions, "accuracy">,
  made: (order: RunOrder, values: readonly number[]) => MadeUp,
  trouble: (order: RunOrder) => boolean = () => false,
): Swept {
  const work = sweep(found, knobs, { accuracy: "quick", ...options });
  let step = work.next();
  while (!step.done) {
    const results = step.value.orders.map(({ assessed, order }): RunResult => {
      if (trouble(order)) return { ok: false, trouble: { reason: "audit" } };
      const { values } = found.points.find((point) => point.assessed.hash === assessed.hash)!;
      return madeUpRun(assessed.rig, order, made(order, values));
    });
    step = work.next(results);
  }
  return step.value;
}
