import type { Recording } from "@secondline/engine";
import { capital, quantity } from "@secondline/words";
import { listed } from "./listed.ts";
import { loadedTraces, type Reading, type Trace, type TraceId, unloadedTraces } from "./traces.ts";

/** What the force plot shows, in a sentence or two, for everyone and above all for those who cannot see it. */
export function forcesSentence(recording: Recording, reading: Reading): string {
  const largest = largestTrace(recording, reading);
  if (!largest) return `Nothing was loaded in the ${quantity.seconds(recording.duration)} of this run.`;
  const { force, time } = largest.peaks[reading];
  const hardest = `Hardest pull: ${quantity.load(force)} in ${largest.inWords}, ${quantity.seconds(time)} into the run`;
  const leash = loadedTraces(recording).find((trace) => trace.id === "leash");
  if (!leash || leash === largest) return `${hardest}.`;
  return `${hardest}; the leash peaked at ${quantity.load(leash.peaks[reading].force)}.`;
}

/** The same of the run that is drawn behind this one. */
export function beforeSentence(previous: Recording, reading: Reading): string {
  const largest = largestTrace(previous, reading);
  const pull = largest ? `${quantity.load(largest.peaks[reading].force)} in ${largest.inWords}` : "nothing was loaded";
  return `In the run before, drawn wide and pale: ${pull}.`;
}

function largestTrace(recording: Recording, reading: Reading): Trace | null {
  return loadedTraces(recording).reduce<Trace | null>(
    (best, trace) => (best === null || trace.peaks[reading].force > best.peaks[reading].force ? trace : best),
    null,
  );
}

/** Traces that together are a whole line. */
const WHOLES: readonly { readonly name: string; readonly ids: readonly TraceId[] }[] = [
  { name: "the main line", ids: ["mainA", "mainB", "ringOnMain"] },
  { name: "the backup", ids: ["backupA", "backupB", "ringOnBackup"] },
];

/** Names what is not drawn because it never carried anything; empty when everything did. */
export function unloadedSentence(recording: Recording): string {
  let traces = unloadedTraces(recording);
  const names: string[] = [];
  for (const { name, ids } of WHOLES) {
    const others = traces.filter((trace) => !ids.includes(trace.id));
    if (traces.length - others.length < ids.length) continue;
    traces = others;
    names.push(name);
  }
  names.push(...traces.map((trace) => trace.inWords));
  return names.length === 0 ? "" : `${capital(listed(names))} stayed unloaded.`;
}

/** The time under the cursor and the forces there, as a screen reader hears it. */
export function cursorSentence(
  time: number,
  forces: readonly { readonly name: string; readonly force: number | null }[],
): string {
  const parts = forces
    .filter(({ force }) => force !== null)
    .map(({ name, force }) => `${name} ${quantity.load(force!)}`);
  return [quantity.seconds(time, 3), ...parts].join(", ");
}
