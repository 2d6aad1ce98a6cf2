import type { Recording } from "@secondline/engine";
import {
  axisKilonewtons,
  COMPARED_TRACES,
  type ComparedId,
  fitRange,
  type Gutter,
  hardestTold,
  LAYOUT_LOOKS,
  layoutDrawing,
  layoutFrame,
  layoutLabels,
  layoutProbes,
  layoutsAt,
  layoutTraceData,
  type TraceLook,
} from "@secondline/figures/time";
import { sayLayouts } from "@secondline/words/page/layouts";
import { LETTERS, type PlaybackClock } from "@secondline/workbench";
import { memo, useCallback, useMemo, useState } from "react";
import { Choice } from "../design/Choice.tsx";
import { TimePlot } from "../time/TimePlot.tsx";
import { useFrameSize } from "../time/useFrameSize.ts";
import { usePalette } from "../time/usePalette.ts";
import { quantity } from "../words.ts";
import styles from "./LayoutTraces.module.css";

interface Props {
  clock: PlaybackClock;
  recordings: readonly (Recording | undefined)[];
  wide: boolean;
}

const GUTTER = { wide: 132, compact: 74 };
const OPTIONS = COMPARED_TRACES.map(({ id, label }) => ({ value: id, label }));

/** One force over time, for all layouts on the same axes. */
export const LayoutTraces = memo(function LayoutTraces({ clock, recordings, wide }: Props) {
  const [trace, setTrace] = useState<ComparedId>("leash");
  const { ref, size } = useFrameSize<HTMLDivElement>();
  const label = COMPARED_TRACES.find(({ id }) => id === trace)!.label;
  return (
    <section className={styles.traces} aria-label={sayLayouts("layoutTraces.forceOfAll")}>
      <div className={styles.head}>
        <h3 className={styles.title}>{sayLayouts("layoutTraces.forceOverTime")}</h3>
        <Choice<ComparedId>
          compact
          label={sayLayouts("layoutTraces.force")}
          value={trace}
          options={OPTIONS}
          onChange={setTrace}
        />
        <p className={styles.sentence}>{hardestTold(recordings, trace, LETTERS)}</p>
      </div>
      <div ref={ref} className={styles.figure}>
        {size.width > 0 && (
          <LayoutPlot
            {...{ clock, recordings, trace }}
            name={label}
            width={size.width}
            height={size.height}
            compact={!wide}
          />
        )}
      </div>
    </section>
  );
});

const NAMED_LOOKS: readonly TraceLook[] = LAYOUT_LOOKS.map((look, i) => ({ name: LETTERS[i]!, look }));

interface PlotProps {
  clock: PlaybackClock;
  recordings: readonly (Recording | undefined)[];
  trace: ComparedId;
  name: string;
  width: number;
  height: number;
  compact: boolean;
  /** Default: the letters of layouts. */
  looks?: readonly TraceLook[];
  /** Room for the names at the right ends. */
  gutter?: Gutter;
  /** Size of the letters at the axes over their usual size; default 1 [-]. */
  lettering?: number;
}

/** One force of several runs on one axis, with the cursor of their clock. */
export function LayoutPlot({
  clock,
  recordings,
  trace,
  name,
  width,
  height,
  compact,
  looks = NAMED_LOOKS,
  gutter = GUTTER,
  lettering = 1,
}: PlotProps) {
  const palette = usePalette();
  const duration = Math.max(...recordings.map((one) => one?.duration ?? 0), 0);
  const [wished, setRange] = useState(fitRange(duration));
  // Another run may be shorter or longer: what was zoomed into may not exist in it.
  const range = wished.to <= duration && wished.to > wished.from ? wished : fitRange(duration);
  const frame = useMemo(
    () => layoutFrame({ width, height, compact, gutter, lettering }),
    [width, height, compact, gutter, lettering],
  );
  const drawing = useMemo(() => layoutDrawing(recordings, looks, palette), [recordings, palette, looks]);
  const pixels = frame.width * Math.min(devicePixelRatio, 2);
  const data = useMemo(() => layoutTraceData(recordings, trace, range, pixels), [recordings, trace, range, pixels]);
  const probes = useMemo(() => layoutProbes(recordings, trace, looks, palette), [recordings, trace, palette, looks]);
  const labels = useMemo(() => layoutLabels(probes, range.to, data.top, frame), [probes, range, data.top, frame]);
  const describe = useCallback((time: number) => layoutsAt(probes, name, time), [probes, name]);
  return (
    <TimePlot
      {...{ clock, range, frame, compact, palette, drawing, data, probes, labels, describe, duration }}
      axisText={axisKilonewtons}
      onRange={setRange}
      format={compact ? quantity.loadIn : quantity.load}
    />
  );
}
