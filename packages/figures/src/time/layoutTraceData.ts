/** One trace of every layout on shared axes, made of the time strip's grid and pyramids. */
import type { Recording } from "@secondline/engine";
import { sayLayouts } from "@secondline/words/page/layouts";
import type { PlotData } from "./plotDrawing.ts";
import { plotGrid, type TimeRange, valuesOn } from "./plotGrid.ts";
import type { Pyramid } from "./pyramid.ts";
import { traceSet } from "./traceSet.ts";
import { loadedTraces, type TraceId } from "./traces.ts";

/** Traces by which layouts can be compared, in the order of the load's way. */
export const COMPARED_TRACES = [
  { id: "leash", label: sayLayouts("layoutTraceData.leashYourHarness") },
  { id: "mainA", label: sayLayouts("layoutTraceData.mainLineA") },
  { id: "mainB", label: sayLayouts("layoutTraceData.mainLineB") },
  { id: "backupA", label: sayLayouts("layoutTraceData.backupA") },
  { id: "backupB", label: sayLayouts("layoutTraceData.backupB") },
] as const satisfies readonly { readonly id: TraceId; readonly label: string }[];
export type ComparedId = (typeof COMPARED_TRACES)[number]["id"];

/** A layout's filtered trace; undefined where that part never pulls in it. */
export function layoutPyramid(recording: Recording, id: ComparedId): Pyramid | undefined {
  if (!loadedTraces(recording).some((trace) => trace.id === id)) return undefined;
  return traceSet(recording).require(id, "filtered");
}

/** Room above the highest value [-], and least force that the axis goes up to [N]. */
const AXIS_OVER_PEAK = 1.1;
const LEAST_AXIS_FORCE = 500;

/** Columns over `range`, about `pixels` of them; undefined recordings give empty columns, so that places stay. */
export function layoutTraceData(
  recordings: readonly (Recording | undefined)[],
  id: ComparedId,
  range: TimeRange,
  pixels: number,
): PlotData {
  const runs = recordings.filter((one) => one !== undefined);
  const longest = runs.reduce<Recording | undefined>(
    (best, one) => (best && best.duration >= one.duration ? best : one),
    undefined,
  );
  if (!longest) return { columns: [[0], ...recordings.map(() => [null])], top: LEAST_AXIS_FORCE };
  const grid = plotGrid(longest.rate, longest.signals.leash.length, range, Math.max(Math.round(pixels), 1));
  let top = LEAST_AXIS_FORCE / AXIS_OVER_PEAK;
  const columns = recordings.map((recording) => {
    const pyramid = recording && layoutPyramid(recording, id);
    if (!recording || !pyramid) return Array.from(grid.times, () => null);
    const values = valuesOn(grid, pyramid, recording.rate);
    for (const value of values) if (value !== null && value > top) top = value;
    return values;
  });
  return { columns: [Array.from(grid.times), ...columns], top: top * AXIS_OVER_PEAK };
}
