/** The model's own recordings of the measured fall, as a load cell would show them. Each draws all inputs that are not known exactly. */
import { type Accuracy, cfc60, type Recording } from "@secondline/engine";
import type { Rig } from "@secondline/rig";
import type { Assessed } from "../assessment/assessment.ts";
import { eventBefore, type WhatIf } from "../events/registry.ts";
import { anchorSignal } from "../run/loads.ts";
import { runAfterBefore } from "../run/runAfterBefore.ts";
import { momentOfCatch, runToEnd } from "../run/runToEnd.ts";
import { type Draw, drawn } from "../scatter/draw.ts";
import type { Spreads } from "../scatter/inputs.ts";
import { Sampler, SEED } from "../scatter/sampler.ts";
import { demandStrengths } from "../strengths/demandStrengths.ts";
import { type RigStrengths, rigStrengths } from "../strengths/rigStrengths.ts";
import type { Channel } from "./recording.ts";

export interface ModelSignal {
  /** The force after CFC 60 [N]. */
  readonly force: Float64Array;
  readonly rate: number;
}

export interface ModelSignals {
  readonly signals: readonly ModelSignal[];
  /** Draws that gave no numbers to trust, with the reasons. */
  readonly failed: readonly string[];
}

export interface ModelSignalsOptions {
  readonly event: WhatIf;
  readonly channel: Channel;
  readonly draws: number;
  readonly accuracy: Accuracy;
  readonly spreads?: Spreads;
}

/** Yields the share done. Nothing gives way but what the event says and tapes, as in a verdict. */
export function* modelSignals(
  { rig, tests }: Assessed,
  { event, channel, draws, accuracy, spreads }: ModelSignalsOptions,
): Generator<number, ModelSignals, void> {
  const strengths = rigStrengths(rig, tests);
  const sampler = new Sampler(rig, { seed: SEED, ...(spreads ? { spreads } : {}) });
  const signals: ModelSignal[] = [];
  const failed: string[] = [];
  for (const [i, { draw }] of sampler.draws(event, 0, draws).entries()) {
    const work = drawnRecording(rig, strengths, event, draw, accuracy);
    let step = work.next();
    for (; !step.done; step = work.next()) yield (i + step.value) / draws;
    if (typeof step.value === "string") failed.push(step.value);
    else signals.push({ force: signalOf(step.value, channel), rate: step.value.rate });
  }
  return { signals, failed };
}

function* drawnRecording(
  rig: Rig,
  strengths: RigStrengths,
  event: WhatIf,
  draw: Draw,
  accuracy: Accuracy,
): Generator<number, Recording | string, void> {
  const earlier = eventBefore(event);
  const before = earlier && (yield* runAfterBefore(rig, strengths, { event: earlier, draw, accuracy }));
  if (before && !before.ok) return before.trouble.detail ?? before.trouble.reason;
  const at = drawn(rig, event, draw);
  const open = { ...at.rig, ground: [] };
  const holds = demandStrengths(rig, strengths);
  const options = { accuracy, shapes: false, letGo: at.letGo, ...(before ? { before } : {}) };
  const moment = yield* momentOfCatch(open, at.event, holds, options);
  if (!moment.ok) return moment.trouble.detail ?? moment.trouble.reason;
  const solved = yield* runToEnd(open, at.event, holds, { ...options, ...moment.known });
  return solved.ok ? solved.recording : (solved.trouble.detail ?? solved.trouble.reason);
}

function signalOf(recording: Recording, channel: Channel): Float64Array {
  switch (channel) {
    case "anchorA":
      return anchorSignal(recording, "A");
    case "anchorB":
      return anchorSignal(recording, "B");
    case "leash":
    case "mainA":
    case "mainB":
    case "backupA":
    case "backupB":
      return cfc60(recording.signals[channel], recording.rate);
  }
}
