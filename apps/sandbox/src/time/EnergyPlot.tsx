import type { Recording } from "@secondline/engine";
import {
  axisKilojoules,
  balanceSentence,
  bandLabels,
  energyData,
  energyDrawing,
  energyStack,
  energyWordsAt,
  markUnder,
  type PlotFrame,
  type Probe,
} from "@secondline/figures/time";
import { quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useCallback, useMemo } from "react";
import { bandFill } from "./bandFill.ts";
import styles from "./Plot.module.css";
import { TimePlot } from "./TimePlot.tsx";
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
  const drawing = useMemo(() => energyDrawing(stack, palette, bandFill), [stack, palette]);
  const data = useMemo(() => energyData(stack, range), [stack, range]);
  const labels = useMemo(
    () => bandLabels(stack, range, frame, data.top, palette, compact),
    [stack, range, frame, data.top, palette, compact],
  );
  const describe = useCallback((time: number) => energyWordsAt(stack, time), [stack]);
  return (
    <TimePlot
      {...{ clock, range, frame, compact, palette, drawing, data, labels, describe }}
      marks={view.marks}
      measure={view.measure}
      probes={NO_PROBES}
      axisText={axisKilojoules}
      duration={recording.duration}
      onRange={view.setRange}
      onMeasure={view.setMeasure}
      snap={(x, y) => (y < 0 ? markUnder(view.marks, x, range, frame) : null)}
      format={quantity.energy}
    >
      {!compact && (
        <p className={styles.key} style={{ width: frame.gutter }} title={sayTime("energyPlot.unaccounted")}>
          {balanceSentence(recording.energy)}
        </p>
      )}
    </TimePlot>
  );
}
