import type { Recording } from "@secondline/engine";
import { quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import { useCallback, useMemo } from "react";
import type { PlaybackClock } from "../clock/playbackClock.ts";
import type { Palette } from "../design/palette.ts";
import { CursorLines, type Probe } from "./CursorLines.tsx";
import { type EndLabel, EndLabels } from "./EndLabels.tsx";
import { EventFlags, markUnder } from "./EventFlags.tsx";
import { type Band, balanceSentence, type EnergyStack, energyStack, indexAt } from "./energyBands.ts";
import { energyData, energyDrawing } from "./energyDrawing.ts";
import styles from "./Plot.module.css";
import { PlotCanvas } from "./PlotCanvas.tsx";
import { type PlotFrame, yOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import { ScrubSurface } from "./ScrubSurface.tsx";
import { usePalette } from "./usePalette.ts";
import type { TimeView } from "./useTimeView.ts";

interface Props {
  readonly recording: Recording;
  readonly clock: PlaybackClock;
  readonly view: TimeView;
  readonly frame: PlotFrame;
  readonly compact: boolean;
}

const NO_PROBES: readonly Probe[] = [];

/** Where the energy of the fall is at every moment, as layers that add up to all there is. */
export function EnergyPlot({ recording, clock, view, frame, compact }: Props) {
  const palette = usePalette();
  const { range } = view;
  const stack = useMemo(() => energyStack(recording.energy), [recording]);
  const drawing = useMemo(() => energyDrawing(stack, palette), [stack, palette]);
  const data = useMemo(() => energyData(stack, range), [stack, range]);
  const labels = useMemo(
    () => bandLabels(stack, range, frame, data.top, palette, compact),
    [stack, range, frame, data.top, palette, compact],
  );
  const describe = useCallback((time: number) => energyAt(stack, time), [stack]);
  return (
    <>
      <PlotCanvas {...{ drawing, data, range, frame, palette }} axisText={axisKilojoules} />
      <EventFlags marks={view.marks} {...{ clock, range, frame, compact }} />
      {!compact && (
        <p className={styles.key} style={{ width: frame.gutter }} title={sayTime("energyPlot.unaccounted")}>
          {balanceSentence(recording.energy)}
        </p>
      )}
      <CursorLines {...{ clock, range, frame }} top={data.top} measure={view.measure} probes={NO_PROBES} />
      <ScrubSurface
        {...{ clock, range, frame, describe }}
        duration={recording.duration}
        onRange={view.setRange}
        onMeasure={view.setMeasure}
        above={compact ? frame.top : 0}
        snap={(x, y) => (y < 0 ? markUnder(view.marks, x, range, frame) : null)}
      />
      <EndLabels {...{ labels, clock, frame, compact }} format={quantity.energy} highlight={null} />
    </>
  );
}

/** Names beside the middles of the layers at the right edge, the stack's top layer on top. */
export function bandLabels(
  stack: EnergyStack,
  range: TimeRange,
  frame: PlotFrame,
  top: number,
  palette: Palette,
  compact: boolean,
): readonly EndLabel[] {
  const last = indexAt(stack.times, range.to);
  return [...stack.bands].reverse().map((band) => ({
    key: band.key,
    name: compact ? band.shortName : band.name,
    // Words need more contrast than areas do.
    colour: palette[band.colour === "ghost" ? "softInk" : band.colour],
    dash: null,
    fill: `${palette[band.colour]}${band.kind === "height" ? "14" : band.kind === "lost" ? "90" : "38"}`,
    width: 1,
    y: yOf((band.bottom[last]! + band.top[last]!) / 2, top, frame),
    rank: band.most,
    valueAt: (time) => valueAt(stack, band, time),
  }));
}

function valueAt(stack: EnergyStack, band: Band, time: number): number | null {
  return band.values[indexAt(stack.times, time)] ?? null;
}

function energyAt(stack: EnergyStack, time: number): string {
  const at = indexAt(stack.times, time);
  const parts = [...stack.bands].reverse().map((band) => `${band.name} ${quantity.energy(band.values[at]!)}`);
  return [quantity.seconds(time, 3), ...parts].join(", ");
}

export function axisKilojoules(energy: number): string {
  return `${quantity.number(Number((energy / 1000).toFixed(2)))}\u00a0kJ`;
}
