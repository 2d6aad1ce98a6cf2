import "./validLanguage.ts";
import { useEffect, useRef } from "react";
import uPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import { axisSeconds, type PlotData, type PlotDrawing, type PlotFrame, type TimeRange } from "@secondline/figures/time";
import type { Palette } from "../design/palette.ts";
import styles from "./Plot.module.css";

interface Props {
  readonly drawing: PlotDrawing<string | CanvasPattern>;
  readonly data: PlotData;
  readonly range: TimeRange;
  readonly frame: PlotFrame;
  readonly palette: Palette;
  /** Values on the axis, in its unit. */
  readonly axisText: (value: number) => string;
}

/** Axes, grid and traces on a canvas. Cursor, labels and marks lie over it as elements of their own. */
export function PlotCanvas({ drawing, data, range, frame, palette, axisText }: Props) {
  const host = useRef<HTMLDivElement>(null);
  const plot = useRef<uPlot | null>(null);
  const now = useRef({ data, range, frame });
  now.current = { data, range, frame };
  const { lettering } = frame;

  useEffect(() => {
    const options = plotOptions(drawing, palette, axisText, { ...now.current.frame, lettering }, () => now.current);
    const made = new uPlot(options, now.current.data.columns, host.current!);
    plot.current = made;
    return () => {
      made.destroy();
      plot.current = null;
    };
  }, [drawing, palette, axisText, lettering]);

  useEffect(() => {
    // `range` counts as well as the data: between two samples a zoom moves the axis alone.
    if (range) plot.current?.setData(data.columns);
  }, [data, range]);

  useEffect(() => {
    plot.current?.setSize(canvasSize(frame));
  }, [frame]);

  return <div ref={host} className={styles.canvas} style={{ top: frame.top - frame.headroom }} aria-hidden="true" />;
}

function canvasSize(frame: PlotFrame): { width: number; height: number } {
  return { width: frame.figureWidth, height: frame.figureHeight - frame.top + frame.headroom };
}

function plotOptions(
  drawing: PlotDrawing<string | CanvasPattern>,
  palette: Palette,
  axisText: (value: number) => string,
  frame: PlotFrame,
  now: () => { data: PlotData; range: TimeRange },
): uPlot.Options {
  const font = `${12 * frame.lettering}px "IBM Plex Sans", "Segoe UI", system-ui, sans-serif`;
  const axis = { font, stroke: palette.softInk, grid: { stroke: palette.rule, width: 1 }, ticks: { show: false } };
  return {
    ...canvasSize(frame),
    padding: [frame.headroom, frame.gutter, 0, 0],
    legend: { show: false },
    cursor: { show: false },
    series: [
      {},
      ...drawing.series.map((one) => ({ ...one, dash: [...one.dash], points: { show: false }, pxAlign: 0 })),
    ],
    bands: drawing.bands.map(({ series: [upper, lower], fill }) => ({ series: [upper, lower], fill })),
    scales: {
      x: { time: false, range: () => [now().range.from, now().range.to] },
      y: { range: () => [0, now().data.top] },
    },
    axes: [
      {
        ...axis,
        size: frame.axisHeight,
        gap: 6,
        space: 76 * frame.lettering,
        values: (_, splits) => splits.map((time) => axisSeconds(time, splits)),
      },
      {
        ...axis,
        size: frame.axisWidth,
        gap: 6,
        space: 30 * frame.lettering,
        values: (_, splits) => splits.map(axisText),
      },
    ],
  };
}
