/** The band behind a trace: from the least to the largest force over the verdict's draws of the same what-if. */
import type { TraceBand, TraceLine } from "@secondline/scenarios";
import type { PlottedTrace, TraceId } from "./traces.ts";

type Column = (number | null)[];

const BANDED_TRACES: readonly TraceId[] = ["leash", "mainA", "mainB", "backupA", "backupB"];

/** The trace with a band behind it: the trace under the pointer, else the leash. More bands would cover one another. */
export function bandedTrace(
  shown: readonly PlottedTrace[],
  highlight: TraceId | null,
  band: TraceBand | undefined,
): PlottedTrace | undefined {
  const wanted = highlight ?? "leash";
  return band && BANDED_TRACES.includes(wanted) ? shown.find(({ id }) => id === wanted) : undefined;
}

/** Lower and upper edge of the band [N] at times [s]; null after the end of the draws. */
export function bandColumns(
  band: TraceBand,
  { id }: Pick<PlottedTrace, "id">,
  times: ArrayLike<number>,
): [Column, Column] {
  const values = band[id as TraceLine];
  const edge = (side: 0 | 1): Column =>
    Array.from({ length: times.length }, (_, i) => {
      const time = times[i]!;
      if (time > band.duration) return null;
      return values[2 * Math.min(band.bins - 1, Math.floor((time / band.duration) * band.bins)) + side]!;
    });
  return [edge(0), edge(1)];
}
