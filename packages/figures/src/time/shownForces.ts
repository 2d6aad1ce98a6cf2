/** Which forces are drawn and how: the reader's choice, else the default. */
import type { Recording } from "@secondline/engine";
import type { TraceBand } from "@secondline/scenarios";
import type { Palette } from "../palette.ts";
import { type ForceView, readyPyramid } from "./forceDrawing.ts";
import type { Probe } from "./probe.ts";
import { forceAt, type TraceSet } from "./traceSet.ts";
import { loadedTraces, shownAtFirst, type TraceId } from "./traces.ts";

/** Which samples are drawn. */
export type DrawnSamples = "both" | "filtered" | "raw";

export interface ForceChoice {
  /** Traces that were switched on or off. */
  readonly wishes: ReadonlyMap<TraceId, boolean>;
  readonly drawn: DrawnSamples;
  /** Key of the trace that is pointed at. */
  readonly highlight: string | null;
  /** Band of draws of the same what-if, behind its traces. */
  readonly band: TraceBand | undefined;
}

export function forceView(recording: Recording, { wishes, drawn, highlight, band }: ForceChoice): ForceView {
  const traces = loadedTraces(recording);
  const atFirst = shownAtFirst(recording);
  return {
    shown: traces.filter(({ id }) => wishes.get(id) ?? atFirst.has(id)),
    reading: drawn === "raw" ? "raw" : "filtered",
    rawBehind: drawn === "both",
    highlight: traces.find(({ id }) => id === highlight)?.id ?? null,
    band,
  };
}

/** The forces under the cursor, by the names of their traces; forces that are not ready yet are null. */
export const forceProbes = (
  traces: TraceSet,
  { shown, reading }: ForceView,
  palette: Palette,
): readonly (Probe & { readonly name: string })[] =>
  shown.map(({ id, name, colour }) => {
    const pyramid = readyPyramid(traces, id, reading);
    const valueAt = (time: number) => forceAt(pyramid, traces.recording.rate, time);
    return { key: id, name, colour: palette[colour], valueAt };
  });
