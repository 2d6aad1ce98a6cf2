import type { Recording } from "@secondline/engine";
import { capital, quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { Palette } from "../palette.ts";
import type { EndLabel } from "./endLabel.ts";
import type { ForceView } from "./forceDrawing.ts";
import type { PeakMark } from "./peakMark.ts";
import { type PlotFrame, xOf, yOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import type { Probe } from "./probe.ts";

/** Peaks of the shown traces. */
export function forcePeaks(
  view: ForceView,
  range: TimeRange,
  frame: PlotFrame,
  top: number,
  palette: Palette,
): readonly PeakMark[] {
  return view.shown
    .map((trace): PeakMark => {
      const { force, time } = trace.peaks[view.reading];
      const pointedOut = view.highlight === trace.id;
      const faded = view.highlight !== null && !pointedOut;
      const place = { time, x: xOf(time, range, frame), y: yOf(force, top, frame) };
      return { key: trace.id, ...place, text: quantity.load(force), colour: palette[trace.colour], pointedOut, faded };
    })
    .filter(({ time, y }) => time >= range.from && time <= range.to && y >= 0);
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
    const { force, time } = trace.peaks[view.reading];
    const end = valueAt(Math.min(range.to, recording.duration)) ?? 0;
    return {
      key: trace.id,
      name: compact ? trace.shortName : trace.name,
      colour,
      dash: trace.dash,
      width: trace.width,
      y: Math.min(Math.max(yOf(end, top, frame), 0), frame.height),
      rank: force,
      valueAt,
      goTo: {
        words: sayTime("forceMarks.goPeak", {
          inWords: capital(trace.inWords),
          load: quantity.load(force),
          seconds: quantity.seconds(time),
        }),
        time,
      },
    };
  });
}

/** The axis has kN, with no more digits than its steps need. */
export function axisKilonewtons(force: number): string {
  return `${quantity.number(Number((force / 1000).toFixed(2)))}\u00a0kN`;
}
