import type { Recording } from "@secondline/engine";
import {
  type DrawnSamples,
  type ForceView,
  forceView,
  loadedTraces,
  type PlottedTrace,
  type TraceId,
} from "@secondline/figures/time";
import type { TraceBand } from "@secondline/scenarios";
import { useMemo, useState } from "react";

export interface ShownTraces {
  readonly forces: ForceView;
  readonly onHighlight: (id: string | null) => void;
  readonly menu: {
    readonly traces: readonly PlottedTrace[];
    readonly shown: ReadonlySet<TraceId>;
    readonly onShown: (id: TraceId, on: boolean) => void;
    readonly drawn: DrawnSamples;
    readonly onDrawn: (drawn: DrawnSamples) => void;
  };
}

/** Which traces are drawn and how: the reader's choice, kept from run to run. `compared`: with the run before, and without a band. */
export function useShownTraces(recording: Recording, compared: boolean, band: TraceBand | undefined): ShownTraces {
  const [wishes, setWishes] = useState<ReadonlyMap<TraceId, boolean>>(new Map());
  const [chosen, onDrawn] = useState<DrawnSamples | null>(null);
  const [highlight, onHighlight] = useState<string | null>(null);
  // Raw signals of one run among the traces of two would be a thicket, unless asked for.
  const drawn = chosen ?? (compared ? "filtered" : "both");
  const behind = compared ? undefined : band;
  const forces = useMemo(
    () => forceView(recording, { wishes, drawn, highlight, band: behind }),
    [recording, wishes, drawn, highlight, behind],
  );
  const traces = loadedTraces(recording);
  const onShown = (id: TraceId, on: boolean) => setWishes((now) => new Map([...now, [id, on]]));
  const shown = new Set(forces.shown.map(({ id }) => id));
  return { forces, onHighlight, menu: { traces, shown, onShown, drawn, onDrawn } };
}
