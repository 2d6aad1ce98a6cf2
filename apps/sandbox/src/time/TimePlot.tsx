import type { EndLabel, EventMark, PlotData, PlotDrawing, PlotFrame, Probe, TimeRange } from "@secondline/figures/time";
import type { PlaybackClock, ScrubTarget } from "@secondline/workbench";
import type { ReactNode } from "react";
import type { Palette } from "../design/palette.ts";
import { CursorLines } from "./CursorLines.tsx";
import { EndLabels } from "./EndLabels.tsx";
import { EventFlags } from "./EventFlags.tsx";
import { PlotCanvas } from "./PlotCanvas.tsx";
import { ScrubSurface } from "./ScrubSurface.tsx";

interface Props extends Pick<ScrubTarget, "duration" | "onRange"> {
  readonly clock: PlaybackClock;
  readonly range: TimeRange;
  readonly frame: PlotFrame;
  readonly compact: boolean;
  readonly palette: Palette;
  readonly drawing: PlotDrawing<string | CanvasPattern>;
  readonly data: PlotData;
  readonly axisText: (value: number) => string;
  readonly probes: readonly Probe[];
  readonly labels: readonly EndLabel[];
  /** A value beside its name. */
  readonly format: (value: number) => string;
  /** The cursor's time and the values there, in words. */
  readonly describe: (time: number) => string;
  /** What happened, over the plot. */
  readonly marks?: readonly EventMark[];
  /** The second cursor [s]; null: none. */
  readonly measure?: number | null;
  readonly onMeasure?: (time: number) => void;
  readonly snap?: ScrubTarget["snap"];
  readonly highlight?: string | null;
  readonly onHighlight?: (key: string | null) => void;
  /** Between the plot and its cursors. */
  readonly children?: ReactNode;
}

/** A plot over time with all that lies over it: flags, cursors, names at the right end, and the surface that is scrubbed. */
export function TimePlot(props: Props) {
  const { clock, range, frame, compact, palette, drawing, data, axisText, probes, labels, format, describe } = props;
  const { marks, measure = null, onMeasure, snap, highlight = null, onHighlight, duration, onRange, children } = props;
  return (
    <>
      <PlotCanvas {...{ drawing, data, range, frame, palette, axisText }} />
      {marks && <EventFlags {...{ marks, clock, range, frame, compact }} />}
      {children}
      <CursorLines {...{ clock, range, frame, probes, measure }} top={data.top} />
      <ScrubSurface
        {...{ clock, range, frame, describe, duration, onRange }}
        onMeasure={onMeasure ?? (() => undefined)}
        above={marks && compact ? frame.top : 0}
        snap={snap ?? (() => null)}
      />
      <EndLabels {...{ labels, clock, frame, compact, format, highlight }} {...(onHighlight ? { onHighlight } : {})} />
    </>
  );
}
