import type { Recording, SignalName } from "@secondline/engine";
import { capitalised, inKilonewtons, inSeconds, listed } from "./format.ts";
import { loadedTraces, peakAs, type Reading, type TraceStyle, unloadedTraces } from "./traces.ts";

/** What the force plot shows, in a sentence or two, for everyone and above all for those who cannot see it. */
export function forcesSentence(recording: Recording, reading: Reading): string {
  const largest = largestTrace(recording, reading);
  if (!largest) return `Nothing was loaded in the ${inSeconds(recording.duration)} of this run.`;
  const { force, time } = peakAs(recording.peaks[largest.signal], reading);
  const hardest = `Hardest pull: ${inKilonewtons(force)} in the ${largest.inWords}, ${inSeconds(time)} into the run`;
  if (largest.signal === "leash" || !loadedTraces(recording).some((trace) => trace.signal === "leash")) {
    return `${hardest}.`;
  }
  return `${hardest}; the leash peaked at ${inKilonewtons(peakAs(recording.peaks.leash, reading).force)}.`;
}

function largestTrace(recording: Recording, reading: Reading): TraceStyle | null {
  const force = (signal: SignalName) => peakAs(recording.peaks[signal], reading).force;
  return loadedTraces(recording).reduce<TraceStyle | null>(
    (best, trace) => (best === null || force(trace.signal) > force(best.signal) ? trace : best),
    null,
  );
}

/** Traces that together are a whole line. */
const WHOLES: readonly { readonly name: string; readonly signals: readonly SignalName[] }[] = [
  { name: "the main line", signals: ["mainA", "mainB", "ringOnMain"] },
  { name: "the backup", signals: ["backupA", "backupB", "ringOnBackup"] },
];

/** Names what is not drawn because it never carried anything; empty when everything did. */
export function unloadedSentence(recording: Recording): string {
  let traces = unloadedTraces(recording);
  const names: string[] = [];
  for (const { name, signals } of WHOLES) {
    const others = traces.filter((trace) => !signals.includes(trace.signal));
    if (traces.length - others.length < signals.length) continue;
    traces = others;
    names.push(name);
  }
  names.push(...traces.map((trace) => trace.inWords));
  return names.length === 0 ? "" : `${capitalised(listed(names))} stayed unloaded.`;
}

/** The time under the cursor and the forces there, as a screen reader hears it. */
export function cursorSentence(
  time: number,
  forces: readonly { readonly name: string; readonly force: number | null }[],
): string {
  const parts = forces
    .filter(({ force }) => force !== null)
    .map(({ name, force }) => `${name} ${inKilonewtons(force!)}`);
  return [inSeconds(time, 3), ...parts].join(", ");
}
