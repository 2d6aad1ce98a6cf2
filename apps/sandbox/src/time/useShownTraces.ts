import type { Recording } from "@secondline/engine";
import { type ForceView, loadedTraces, shownAtFirst, type Trace, type TraceId } from "@secondline/figures/time";
import type { TraceBand } from "@secondline/scenarios";
import { useMemo, useState } from "react";

/** Which samples are drawn. */
export type Drawn = "both" | "filtered" | "raw";

export interface ShownTraces {
  readonly forces: ForceView;
  readonly onHighlight: (id: string | null) => void;
  readonly menu: {
    readonly traces: readonly Trace[];
    readonly shown: ReadonlySet<TraceId>;
    readonly onShown: (id: TraceId, on: boolean) => void;
    readonly drawn: Drawn;
    readonly onDrawn: (drawn: Drawn) => void;
  };
}

/** Which traces are drawn and how: the reader's choice, kept from run to run. `compared`: with the run before, and without a band. */
export function useShownTraces(recording: Recording, compared: boolean, band: TraceBand | undefined): ShownTraces {
  const [wishes, setWishes] = useState<ReadonlyMap<TraceId, boolean>>(new Map());
  const [chosen, onDrawn] = useState<Drawn | null>(null);
  const [highlight, onHighlight] = useState<string | null>(null);
  // Raw signals of one run among the traces of two would be a thicket, unless asked for.
  const drawn = chosen ?? (compared ? "filtered" : "both");
  const traces = useMemo(() => loadedTraces(recording), [recording]);
  const atFirst = useMemo(() => shownAtFirst(recording), [recording]);
  const forces = useMemo(
    (): ForceView => ({
      shown: traces.filter(({ id }) => wishes.get(id) ?? atFirst.has(id)),
      reading: drawn === "raw" ? "raw" : "filtered",
      rawBehind: drawn === "both",
      highlight: traces.find(({ id }) => id === highlight)?.id ?? null,
      band: compared ? undefined : band,
    }),
    [traces, atFirst, wishes, drawn, highlight, compared, band],
  );
  const onShown = (id: TraceId, on: boolean) => setWishes((now) => new Map([...now, [id, on]]));
  const shown = new Set(forces.shown.map(({ id }) => id));
  return { forces, onHighlight, menu: { traces, shown, onShown, drawn, onDrawn } };
}
