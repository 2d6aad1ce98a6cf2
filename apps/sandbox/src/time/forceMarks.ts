import type { Recording } from "@secondline/engine";
import type { Palette } from "../design/palette.ts";
import type { Probe } from "./CursorLines.tsx";
import { connectionPeaks } from "./connectionPeaks.ts";
import type { EndLabel } from "./EndLabels.tsx";
import type { ForceView } from "./forceDrawing.ts";
import { capitalised, inKilonewtons, inSeconds } from "./format.ts";
import type { PeakMark } from "./PeakMarks.tsx";
import { type PlotFrame, xOf, yOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import { peakAs } from "./traces.ts";

/** Peaks of the shown traces, and of the connections, which have a largest force but no trace. */
export function forcePeaks(
  recording: Recording,
  view: ForceView,
  range: TimeRange,
  frame: PlotFrame,
  top: number,
  palette: Palette,
): readonly PeakMark[] {
  const at = (time: number, force: number) => ({ time, x: xOf(time, range, frame), y: yOf(force, top, frame) });
  const onTraces = view.shown.map((trace): PeakMark => {
    const { force, time } = peakAs(recording.peaks[trace.signal], view.reading);
    const text = inKilonewtons(force);
    const pointedOut = view.highlight === trace.signal;
    const faded = view.highlight !== null && !pointedOut;
    return {
      key: trace.signal,
      ...at(time, force),
      text,
      colour: palette[trace.colour],
      shape: "ring",
      pointedOut,
      faded,
    };
  });
  const onConnections = connectionPeaks(recording).map(({ name, force, time }): PeakMark => {
    const faded = view.highlight !== null;
    const look = { colour: palette.lineConnection, shape: "diamond", pointedOut: false, faded } as const;
    return { key: name, ...at(time, force), text: `${name} ${inKilonewtons(force)}`, ...look };
  });
  const inView = ({ time, y }: PeakMark) => time >= range.from && time <= range.to && y >= 0;
  return [...onTraces, ...onConnections.filter((mark) => mark.y < frame.height - 2)].filter(inView);
}

/** Names at the right ends of the traces. */
export function forceLabels(
  recording: Recording,
  view: ForceView,
  probes: readonly Probe[],
  range: TimeRange,
  frame: PlotFrame,
  top: number,
  compact: boolean,
): readonly EndLabel[] {
  return view.shown.map((trace, i) => {
    const { valueAt, colour } = probes[i]!;
    const { force, time } = peakAs(recording.peaks[trace.signal], view.reading);
    const end = valueAt(Math.min(range.to, recording.duration)) ?? 0;
    return {
      key: trace.signal,
      name: compact ? trace.shortName : trace.name,
      colour,
      dash: trace.dash,
      width: trace.width,
      y: Math.min(Math.max(yOf(end, top, frame), 0), frame.height),
      rank: force,
      valueAt,
      goTo: {
        words: `${capitalised(trace.name)}: go to its peak, ${inKilonewtons(force)} at ${inSeconds(time)}`,
        time,
      },
    };
  });
}
