import type { Recording } from "@secondline/engine";
import {
  axisKilonewtons,
  cursorSentence,
  type ForceView,
  forceData,
  forceDrawing,
  forceLabels,
  forcePeaks,
  forceProbes,
  markUnder,
  type PlotFrame,
  peakUnder,
} from "@secondline/figures/time";
import { quantity } from "@secondline/words";
import type { PlaybackClock } from "@secondline/workbench";
import { useCallback, useMemo } from "react";
import { PeakMarks } from "./PeakMarks.tsx";
import { PlotKey } from "./PlotKey.tsx";
import { TimePlot } from "./TimePlot.tsx";
import { usePalette } from "./usePalette.ts";
import type { TimeView } from "./useTimeView.ts";
import { useTraces } from "./useTraces.ts";

interface Props {
  readonly recording: Recording;
  readonly previous: Recording | undefined;
  readonly clock: PlaybackClock;
  readonly view: TimeView;
  readonly forces: ForceView;
  readonly onHighlight: (key: string | null) => void;
  readonly frame: PlotFrame;
  readonly compact: boolean;
}

/** Force traces of lines and leash on one axis. */
export function ForcesPlot({ recording, previous, clock, view, forces, onHighlight, frame, compact }: Props) {
  const palette = usePalette();
  const { traces, ready } = useTraces(recording);
  const before = useTraces(previous ?? recording);
  const beforeTraces = previous ? before.traces : null;
  const { range } = view;
  const drawing = useMemo(() => forceDrawing(forces, beforeTraces !== null, palette), [forces, beforeTraces, palette]);
  const pixels = frame.width * Math.min(devicePixelRatio, 2);
  // biome-ignore lint/correctness/useExhaustiveDependencies: traces become ready one by one; their number says so
  const data = useMemo(
    () => forceData(recording, traces, beforeTraces, forces, range, pixels),
    [recording, traces, ready, beforeTraces, before.ready, forces, range, pixels],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  const probes = useMemo(() => forceProbes(traces, forces, palette), [traces, ready, forces, palette]);
  const peaks = useMemo(
    () => forcePeaks(forces, range, frame, data.top, palette),
    [forces, range, frame, data.top, palette],
  );
  const labels = useMemo(
    () => forceLabels(recording, forces, probes, range, frame, data.top, compact),
    [recording, forces, probes, range, frame, data.top, compact],
  );
  const describe = useCallback(
    (time: number) =>
      cursorSentence(
        time,
        probes.map(({ name, valueAt }) => ({ name, force: valueAt(time) })),
      ),
    [probes],
  );
  return (
    <TimePlot
      {...{ clock, range, frame, compact, palette, drawing, data, probes, labels, describe, onHighlight }}
      marks={view.marks}
      measure={view.measure}
      axisText={axisKilonewtons}
      duration={recording.duration}
      onRange={view.setRange}
      onMeasure={view.setMeasure}
      snap={(x, y) => (y < 0 ? markUnder(view.marks, x, range, frame) : peakUnder(peaks, x, y))}
      format={compact ? quantity.loadIn : quantity.load}
      highlight={forces.highlight}
    >
      {!compact && (
        <PlotKey
          frame={frame}
          rawBehind={forces.rawBehind}
          compared={beforeTraces !== null}
          draws={drawing.bands.length > 0 ? forces.band?.draws : undefined}
        />
      )}
      <PeakMarks peaks={peaks} frame={frame} />
    </TimePlot>
  );
}
