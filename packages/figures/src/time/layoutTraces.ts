/** One force of several runs over time on one axis: the drawing and its words. */
import type { Recording } from "@secondline/engine";
import { listed, quantity } from "@secondline/words";
import { sayLayouts } from "@secondline/words/page/layouts";
import type { Palette } from "../palette.ts";
import type { EndLabel } from "./endLabel.ts";
import type { LayoutLook } from "./layoutLook.ts";
import { type ComparedId, layoutPyramid } from "./layoutTraceData.ts";
import type { PlotDrawing } from "./plotDrawing.ts";
import { type PlotFrame, type PlotRoom, plotFrame, yOf } from "./plotFrame.ts";
import type { Probe } from "./probe.ts";
import { forceAt } from "./traceSet.ts";

/** Name and look of the trace of a run. */
export interface TraceLook {
  readonly name: string;
  readonly look: LayoutLook;
}

/** A trace under the cursor, with the name of its run. */
export interface LayoutProbe extends Probe {
  readonly name: string;
  readonly dash: readonly number[];
}

type Runs = readonly (Recording | undefined)[];

/** Without lanes for the words of events: they differ from run to run. */
export function layoutFrame(room: PlotRoom): PlotFrame {
  const whole = plotFrame(room);
  return { ...whole, top: whole.headroom, height: room.height - whole.headroom - whole.axisHeight };
}

export const layoutDrawing = (recordings: Runs, looks: readonly TraceLook[], palette: Palette): PlotDrawing => ({
  series: recordings.map((_, i) => {
    const { colour, dash } = looks[i]!.look;
    return { stroke: palette[colour], width: 2, dash, alpha: 1 };
  }),
  bands: [],
});

/** Traces of the runs in which the part pulls. */
export function layoutProbes(
  recordings: Runs,
  trace: ComparedId,
  looks: readonly TraceLook[],
  palette: Palette,
): readonly LayoutProbe[] {
  return recordings.flatMap((recording, i): readonly LayoutProbe[] => {
    const pyramid = recording && layoutPyramid(recording, trace);
    if (!recording || !pyramid) return [];
    const { name, look } = looks[i]!;
    const valueAt = (time: number) => forceAt(pyramid, recording.rate, time);
    return [{ key: name, name, colour: palette[look.colour], dash: look.dash, valueAt }];
  });
}

/** Names at the right ends of the traces; `end`: of the visible range [s], `top`: of the axis [N]. */
export const layoutLabels = (
  probes: readonly LayoutProbe[],
  end: number,
  top: number,
  frame: PlotFrame,
): readonly EndLabel[] =>
  probes.map(({ key, name, colour, dash, valueAt }) => ({
    key,
    name,
    colour,
    dash,
    width: 2,
    y: yOf(valueAt(end) ?? 0, top, frame),
    rank: 1,
    valueAt,
  }));

/** The values at the cursor: "1.20 s. Leash: A 3.1 kN and B 2.8 kN". */
export function layoutsAt(probes: readonly LayoutProbe[], trace: string, time: number): string {
  const loads = probes.flatMap(({ name, valueAt }) => {
    const value = valueAt(time);
    return value === null ? [] : [`${name} ${quantity.load(value)}`];
  });
  return `${quantity.seconds(time)}. ${trace}: ${listed(loads, "and")}`;
}

/** "Hardest: A 4.6 kN, B 6.8 kN." */
export function hardestTold(recordings: Runs, trace: ComparedId, names: readonly string[]): string {
  const peaks = recordings.flatMap((recording, i) => {
    const peak = recording && layoutPyramid(recording, trace) && recording.peaks[trace].cfc60;
    return peak === undefined ? [] : [`${names[i]} ${quantity.load(peak)}`];
  });
  return peaks.length === 0
    ? sayLayouts("layoutTraces.none")
    : sayLayouts("layoutTraces.hardest", { peaks: listed(peaks, "and") });
}
