import type { Recording } from "@secondline/engine";
import { capital, listed, quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import { energySentence } from "./energyBands.ts";
import { loadedTraces, type PlottedTrace, type Reading, type TraceId, unloadedTraces } from "./traces.ts";

/** The force plot in a sentence or two, above all for readers who cannot see it. */
export function forcesSentence(recording: Recording, reading: Reading): string {
  const largest = largestTrace(recording, reading);
  if (!largest) return sayTime("describe.nothingLoadedFor", { seconds: quantity.seconds(recording.duration) });
  const { force, time } = largest.peaks[reading];
  const hardest = sayTime("describe.hardest", {
    load: quantity.load(force),
    inWords: largest.inWords,
    seconds: quantity.seconds(time),
  });
  const leash = loadedTraces(recording).find((trace) => trace.id === "leash");
  if (!leash || leash === largest) return `${hardest}.`;
  return sayTime("describe.leashPeaked", { hardest, load: quantity.load(leash.peaks[reading].force) });
}

/** The same for the run that is drawn behind this one. */
export function beforeSentence(previous: Recording, reading: Reading): string {
  const largest = largestTrace(previous, reading);
  const pull = largest
    ? sayTime("describe.in", { load: quantity.load(largest.peaks[reading].force), inWords: largest.inWords })
    : sayTime("describe.nothingLoaded");
  return sayTime("describe.runBefore", { pull });
}

function largestTrace(recording: Recording, reading: Reading): PlottedTrace | null {
  return loadedTraces(recording).reduce<PlottedTrace | null>(
    (best, trace) => (best === null || trace.peaks[reading].force > best.peaks[reading].force ? trace : best),
    null,
  );
}

/** Traces that together are a whole line. */
const WHOLE_LINES: readonly { readonly name: string; readonly ids: readonly TraceId[] }[] = [
  { name: sayTime("describe.mainLine"), ids: ["mainA", "mainB", "ringOnMain"] },
  { name: sayTime("describe.backup"), ids: ["backupA", "backupB", "ringOnBackup"] },
];

/** Names the traces that are not drawn because they never carried a load; empty if all did. */
export function unloadedSentence(recording: Recording): string {
  let traces = unloadedTraces(recording);
  const names: string[] = [];
  for (const { name, ids } of WHOLE_LINES) {
    const others = traces.filter((trace) => !ids.includes(trace.id));
    if (traces.length - others.length < ids.length) continue;
    traces = others;
    names.push(name);
  }
  names.push(...traces.map((trace) => trace.inWords));
  return names.length === 0 ? "" : sayTime("describe.stayedUnloaded", { names: capital(listed(names, "and")) });
}

/** The time under the cursor and the forces there, as a screen reader hears it. */
export function cursorSentence(
  time: number,
  forces: readonly { readonly name: string; readonly force: number | null }[],
): string {
  const parts = forces
    .filter(({ force }) => force !== null)
    .map(({ name, force }) => `${name} ${quantity.load(force!)}`);
  return listed([quantity.seconds(time, 3), ...parts]);
}

/** The time strip of a run in words; `previous`: the run that is drawn behind it. */
export function stripSentence(
  shown: "forces" | "energy" | "numbers",
  recording: Recording,
  previous: Recording | undefined,
  reading: Reading,
): string {
  if (shown === "energy") return energySentence(recording);
  const compared = previous && shown === "forces" ? beforeSentence(previous, reading) : "";
  return `${forcesSentence(recording, reading)} ${unloadedSentence(recording)} ${compared}`;
}
