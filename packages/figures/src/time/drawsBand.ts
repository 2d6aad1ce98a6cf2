/** The band behind a trace: from the least to the largest force that falls of the same what-if have, as the verdict drew them. */
import type { TraceBand, TraceLine } from "@secondline/scenarios";
import type { PlottedTrace, TraceId } from "./traces.ts";

type Column = (number | null)[];

const BANDED_TRACES: readonly TraceId[] = ["leash", "mainA", "mainB", "backupA", "backupB"];

/** The one trace that has a band drawn behind it: the one that is pointed at, else the leash. More of them would cover one another. */
export function bandedTrace(
  shown: readonly PlottedTrace[],
  highlight: TraceId | null,
  band: TraceBand | undefined,
): PlottedTrace | undefined {
  const wanted = highlight ?? "leash";
  return band && BANDED_TRACES.includes(wanted) ? shown.find(({ id }) => id === wanted) : undefined;
}

/** Its lower and its upper edge [N] at times [s]; null where the draws have ended. */
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
