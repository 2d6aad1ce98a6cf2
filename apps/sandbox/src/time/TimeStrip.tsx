import { Tabs } from "@base-ui/react/tabs";
import type { Recording } from "@secondline/engine";
import { type PlotRequest, plotFrame, stripGutter, stripSentence, type TimeRange } from "@secondline/figures/time";
import type { TraceBand } from "@secondline/scenarios";
import { type BreaksTold, quantity } from "@secondline/words";
import { drawsBandSentence } from "@secondline/words/draws";
import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useId, useMemo, useState } from "react";
import { EnergyPlot } from "./EnergyPlot.tsx";
import { ForcesPlot } from "./ForcesPlot.tsx";
import { NumbersPanel } from "./NumbersPanel.tsx";
import { PlayBar } from "./PlayBar.tsx";
import { RangeTools } from "./RangeTools.tsx";
import { ShowMenu } from "./ShowMenu.tsx";
import styles from "./TimeStrip.module.css";
import { axisTextWidth } from "./textWidth.ts";
import { useFrameSize } from "./useFrameSize.ts";
import { useShownTraces } from "./useShownTraces.ts";
import { stripKeys, useTimeView } from "./useTimeView.ts";

interface Props {
  readonly recording: Recording;
  /** The run before, drawn lighter behind this one. */
  readonly previous?: Recording | undefined;
  readonly clock: PlaybackClock;
  /** The band of draws of the same what-if, shown behind its traces. */
  readonly band?: TraceBand | undefined;
  /** What gave way in the run, as its outcome names it. */
  readonly told?: BreaksTold | undefined;
  /** One column, touch first: a phone's sheet. */
  readonly compact: boolean;
  /** False where several strips share one clock and one set of controls. */
  readonly controls?: boolean;
  /** Offers the forces in view as a file; the caller makes it of `csvChunks`. */
  readonly onSaveRange?: ((range: TimeRange) => void) | undefined;
  /** Offers the plot as a picture; the caller makes it of `plotBody`. */
  readonly onSavePlot?: ((plot: PlotRequest, kind: "png" | "svg") => void) | undefined;
}

type Tab = "forces" | "energy" | "numbers";

/** Time along the bottom of the page: what pulled how hard when, where the energy went, and the controls of playback. */
export function TimeStrip(props: Props) {
  const { recording, previous, band, clock, told, compact, controls = true, onSaveRange, onSavePlot } = props;
  const [tab, setTab] = useState<Tab>("forces");
  const view = useTimeView(recording, clock, told);
  const show = useShownTraces(recording, previous !== undefined, band);
  const { ref, size } = useFrameSize<HTMLElement>();
  const frame = useMemo(
    () =>
      plotFrame({
        ...size,
        compact,
        gutter: stripGutter(tab === "energy" ? tab : "forces", recording, axisTextWidth),
      }),
    [size, compact, tab, recording],
  );
  const onKeyDown = useMemo(() => stripKeys(view.act), [view.act]);
  const sentence = useId();
  const laidOut = size.width > 0 && size.height > 0;
  const { forces, onHighlight, menu } = show;
  const savePlot =
    onSavePlot &&
    ((kind: "png" | "svg") => {
      const { time } = clock.getSnapshot();
      onSavePlot(
        { recording, previous, told, range: view.range, time, forces: tab === "energy" ? null : forces },
        kind,
      );
    });
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: keys work wherever the focus is within the strip; each also has a button
    <div className={styles.place} onKeyDown={onKeyDown}>
      <div className={styles.strip} data-compact={compact} data-controls={controls}>
        {controls && <PlayBar clock={clock} act={view.act} measure={view.measure} compact={compact} />}
        <Tabs.Root className={styles.views} value={tab} onValueChange={(next: Tab) => setTab(next)}>
          <div className={styles.head}>
            <TabNames />
            <div className={styles.tools}>
              {tab !== "energy" && <ShowMenu {...menu} />}
              <RangeTools
                {...{ recording, clock, view, forces, compact }}
                save={{ csv: onSaveRange, plot: savePlot }}
              />
            </div>
            <p id={sentence} className={styles.sentence}>
              {quantity.unbroken(stripSentence(tab, recording, previous, forces.reading))}
              {tab === "forces" && forces.band && (
                // Beside the plot its key says it in short.
                <span className={compact ? undefined : "visually-hidden"}> {drawsBandSentence(forces.band)}</span>
              )}
            </p>
          </div>
          <Tabs.Panel className={styles.panel} value={tab}>
            <figure ref={ref} className={styles.figure} aria-labelledby={sentence}>
              {laidOut && tab === "forces" && (
                <ForcesPlot {...{ recording, previous, clock, view, forces, onHighlight, frame, compact }} />
              )}
              {laidOut && tab === "energy" && <EnergyPlot {...{ recording, clock, view, frame, compact }} />}
              {tab === "numbers" && <NumbersPanel {...{ recording, clock, view }} {...forces} />}
            </figure>
          </Tabs.Panel>
        </Tabs.Root>
      </div>
    </div>
  );
}

const TABS: readonly Tab[] = ["forces", "energy", "numbers"];

function TabNames() {
  return (
    <Tabs.List className={styles.tabs} aria-label={sayTime("timeStrip.whatSeeOver")}>
      {TABS.map((tab) => (
        <Tabs.Tab key={tab} className={styles.tab} value={tab}>
          {sayTime(`timeStrip.${tab}`)}
        </Tabs.Tab>
      ))}
    </Tabs.List>
  );
}
