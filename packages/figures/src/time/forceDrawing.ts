import type { Recording } from "@secondline/engine";
import type { TraceBand } from "@secondline/scenarios";
import type { Palette } from "../palette.ts";
import { bandColumns, bandedTrace } from "./drawsBand.ts";
import type { PlotData, PlotDrawing, PlotSeries } from "./plotDrawing.ts";
import { plotGrid, type TimeRange, valuesOn } from "./plotGrid.ts";
import { buildPyramid, type Pyramid } from "./pyramid.ts";
import type { TraceSet } from "./traceSet.ts";
import type { PlottedTrace, Reading, TraceId } from "./traces.ts";

/** The reader's choices of view. */
export interface ForceView {
  readonly shown: readonly PlottedTrace[];
  readonly reading: Reading;
  /** The raw signal faint behind the filtered one. */
  readonly rawBehind: boolean;
  readonly highlight: TraceId | null;
  /** Band of the draws of the same what-if, if there are any. */
  readonly band?: TraceBand | undefined;
}

/** One drawn line: a trace of this run or of the one before, read one way. */
interface Layer {
  readonly trace: PlottedTrace;
  readonly role: "before" | "behind" | "front";
  readonly reading: Reading;
}

/** From the back to the front: the run before, the raw signals, the traces. */
function layersOf(view: ForceView, compared: boolean): readonly Layer[] {
  // The first trace, the leash, is drawn last.
  const traces = [...view.shown].reverse();
  const of = (role: Layer["role"], reading: Reading) => traces.map((trace) => ({ trace, role, reading }));
  const noisy = traces.filter((trace) => !trace.readAlready);
  const behind = view.rawBehind && view.reading === "filtered";
  return [
    ...(compared ? of("before", view.reading) : []),
    ...(behind ? noisy.map((trace): Layer => ({ trace, role: "behind", reading: "raw" })) : []),
    ...of("front", view.reading),
  ];
}

const OPACITY = { before: 0.34, behind: 0.3, front: 1 } as const;
/** Opacity of traces that are not highlighted. */
const FADED_OPACITY = 0.25;

export function forceDrawing(view: ForceView, compared: boolean, palette: Palette): PlotDrawing {
  const series = layersOf(view, compared).map(({ trace, role }): PlotSeries => {
    const faded = view.highlight !== null && view.highlight !== trace.id;
    return {
      stroke: palette[trace.colour],
      width: role === "before" ? trace.width + 2.5 : role === "behind" ? 1 : trace.width,
      dash: role === "behind" ? [] : trace.dash,
      alpha: OPACITY[role] * (faded ? FADED_OPACITY : 1),
    };
  });
  const banded = bandedTrace(view.shown, view.highlight, view.band);
  if (!banded) return { series, bands: [] };
  // Its edges come first, so that every trace lies over them.
  const edge: PlotSeries = { stroke: "transparent", width: 0, dash: [], alpha: 1 };
  return {
    series: [edge, edge, ...series],
    bands: [{ series: [2, 1], fill: `${palette[banded.colour]}${BAND_TINT}` }],
  };
}

/** Opacity of the band behind a trace, as two hexadecimal digits. */
const BAND_TINT = "2b";

/** Least force that the axis goes up to [N]: an unloaded rig is a flat line, not a magnified rounding error. */
const LEAST_AXIS_FORCE = 500;
/** Room above the highest value for the words at its peak [-]. */
const AXIS_OVER_PEAK = 1.14;

/** Columns of data for those layers over `range`, about `pixels` of them. */
export function forceData(
  recording: Recording,
  traces: TraceSet,
  before: TraceSet | null,
  view: ForceView,
  range: TimeRange,
  pixels: number,
): PlotData {
  const count = recording.signals.leash.length;
  const grid = plotGrid(recording.rate, count, range, Math.max(Math.round(pixels), 1));
  let top = LEAST_AXIS_FORCE / AXIS_OVER_PEAK;
  const columns = layersOf(view, before !== null).map(({ trace, role, reading }) => {
    const set = role === "before" ? before! : traces;
    const pyramid = set.get(trace.id, reading);
    // The axis does not jump while traces arrive: their peaks are known beforehand.
    if (pyramid === null) top = Math.max(top, trace.peaks[reading].force);
    const values = valuesOn(grid, pyramid ?? EMPTY_PYRAMID, set.recording.rate);
    for (const value of values) if (value !== null && value > top) top = value;
    return values;
  });
  const banded = bandedTrace(view.shown, view.highlight, view.band);
  const edges = banded && view.band ? bandColumns(view.band, banded, grid.times) : [];
  for (const value of edges[1] ?? []) if (value !== null && value > top) top = value;
  return { columns: [Array.from(grid.times), ...edges, ...columns], top: top * AXIS_OVER_PEAK };
}

const EMPTY_PYRAMID = buildPyramid(new Float32Array());

/** The ready data of a trace. For the first few frames there are none, and the trace is not drawn. */
export function readyPyramid(traces: TraceSet, id: TraceId, reading: Reading): Pyramid {
  return traces.get(id, reading) ?? EMPTY_PYRAMID;
}
