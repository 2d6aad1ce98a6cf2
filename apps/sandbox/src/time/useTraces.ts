import type { Recording } from "@secondline/engine";
import { type TraceSet, traceSet } from "@secondline/figures/time";
import { useMemo, useSyncExternalStore } from "react";

/** The traces of a recording, rendered anew as more traces become ready. */
export function useTraces(recording: Recording): { readonly traces: TraceSet; readonly ready: number } {
  const traces = useMemo(() => traceSet(recording), [recording]);
  const ready = useSyncExternalStore(traces.subscribe, traces.ready);
  return { traces, ready };
}
