import { cfc60, type Recording, SIGNALS, type SignalName } from "@secondline/engine";
import { buildPyramid, type Pyramid } from "./pyramid.ts";
import type { Reading } from "./traces.ts";

/** A run's force signals, ready to draw: pyramids over the raw and the filtered samples, made one by one. */
export interface TraceSet {
  readonly recording: Recording;
  /** Null until it is ready. */
  readonly get: (signal: SignalName, reading: Reading) => Pyramid | null;
  /** Makes it now if need be; a few milliseconds for a signal of a few seconds. */
  readonly require: (signal: SignalName, reading: Reading) => Pyramid;
  /** Number of pyramids that are ready; a snapshot that changes with every one. */
  readonly ready: () => number;
  readonly subscribe: (listener: () => void) => () => void;
}

const sets = new WeakMap<Recording, TraceSet>();

/** The traces of a recording, once per recording. They are prepared in the background, one signal per task. */
export function traceSet(recording: Recording): TraceSet {
  const known = sets.get(recording);
  if (known) return known;
  const made = createTraceSet(recording);
  sets.set(recording, made);
  return made;
}

function createTraceSet(recording: Recording): TraceSet {
  const pyramids = new Map<string, Pyramid>();
  const listeners = new Set<() => void>();

  function require(signal: SignalName, reading: Reading): Pyramid {
    const key = `${signal}:${reading}`;
    const known = pyramids.get(key);
    if (known) return known;
    const samples = recording.signals[signal];
    const made = buildPyramid(reading === "raw" ? samples : cfc60(samples, recording.rate));
    pyramids.set(key, made);
    return made;
  }

  const waiting = (["filtered", "raw"] as const).flatMap((reading) =>
    SIGNALS.map((signal) => () => require(signal, reading)),
  );
  function next(): void {
    const task = waiting.shift();
    if (!task) return;
    task();
    for (const listener of [...listeners]) listener();
    setTimeout(next, 0);
  }
  setTimeout(next, 0);

  return {
    recording,
    get: (signal, reading) => pyramids.get(`${signal}:${reading}`) ?? null,
    require,
    ready: () => pyramids.size,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Force at `time`, between samples on the straight line that is drawn between them [N]; null after the run's end. */
export function forceAt(pyramid: Pyramid, rate: number, time: number): number | null {
  const { samples } = pyramid;
  const at = time * rate;
  const before = Math.floor(at);
  if (before < 0 || samples.length === 0 || at > samples.length) return null;
  const low = samples[Math.min(before, samples.length - 1)]!;
  const high = samples[Math.min(before + 1, samples.length - 1)]!;
  return low + (high - low) * (at - before);
}
