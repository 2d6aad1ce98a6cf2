import { cfc60, type Recording } from "@secondline/engine";
import { buildPyramid, type Pyramid } from "./pyramid.ts";
import { type Reading, type TraceId, tracesOf } from "./traces.ts";

/** A run's force traces, ready to draw: pyramids over the raw and the filtered samples, made one by one. */
export interface TraceSet {
  readonly recording: Recording;
  /** Traces that this run has. */
  readonly ids: ReadonlySet<TraceId>;
  /** Null until it is ready, and for a trace that this run does not have. */
  readonly get: (id: TraceId, reading: Reading) => Pyramid | null;
  /** Makes the pyramid now if need be; this takes a few milliseconds for a trace of a few seconds. */
  readonly require: (id: TraceId, reading: Reading) => Pyramid;
  /** Number of pyramids that are ready; a snapshot that changes with every one. */
  readonly ready: () => number;
  readonly subscribe: (listener: () => void) => () => void;
}

const sets = new WeakMap<Recording, TraceSet>();

/** The traces of a recording, once per recording. They are prepared in the background, one trace per task. */
export function traceSet(recording: Recording): TraceSet {
  const known = sets.get(recording);
  if (known) return known;
  const made = createTraceSet(recording);
  sets.set(recording, made);
  return made;
}

function createTraceSet(recording: Recording): TraceSet {
  const traces = tracesOf(recording);
  const pyramids = new Map<string, Pyramid>();
  const listeners = new Set<() => void>();

  function require(id: TraceId, reading: Reading): Pyramid {
    const trace = traces.find((candidate) => candidate.id === id);
    if (!trace) throw new Error(`this run has no trace "${id}"`);
    const asIs = reading === "raw" || trace.readAlready;
    const key = `${id}:${asIs ? "raw" : "filtered"}`;
    const known = pyramids.get(key);
    if (known) return known;
    const made = buildPyramid(asIs ? trace.samples : cfc60(trace.samples, recording.rate));
    pyramids.set(key, made);
    return made;
  }

  const waiting = (["filtered", "raw"] as const).flatMap((reading) =>
    traces.map(
      ({ id }) =>
        () =>
          require(id, reading),
    ),
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
    ids: new Set(traces.map(({ id }) => id)),
    get: (id, reading) => pyramids.get(`${id}:${reading}`) ?? (reading === "filtered" ? readAlready(id) : null),
    require,
    ready: () => pyramids.size,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };

  function readAlready(id: TraceId): Pyramid | null {
    const trace = traces.find((candidate) => candidate.id === id);
    return trace?.readAlready ? (pyramids.get(`${id}:raw`) ?? null) : null;
  }
}

/** A run that ends with an event, such as the ground, ends some samples after its last one: by at most this time [s]. */
const LAST_STEP = 0.004;

/** Force at `time`, between samples on the straight line that is drawn between them [N]; null after the run's end. */
export function forceAt(pyramid: Pyramid, rate: number, time: number): number | null {
  const { samples } = pyramid;
  const at = time * rate;
  const before = Math.floor(at);
  if (before < 0 || samples.length === 0 || at > samples.length + LAST_STEP * rate) return null;
  const low = samples[Math.min(before, samples.length - 1)]!;
  const high = samples[Math.min(before + 1, samples.length - 1)]!;
  return low + (high - low) * (at - before);
}
