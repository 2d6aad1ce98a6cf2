import { Tabs } from "@base-ui/react/tabs";
import type { Recording } from "@secondline/engine";
import { useId, useMemo, useState } from "react";
import type { PlaybackClock } from "../clock/playbackClock.ts";
import { forcesSentence, unloadedSentence } from "./describe.ts";
import { EnergyPlot } from "./EnergyPlot.tsx";
import { energySentence } from "./energyBands.ts";
import { ForcesPlot } from "./ForcesPlot.tsx";
import type { ForceView } from "./forceDrawing.ts";
import { goToEntries } from "./goTo.ts";
import { NumbersPanel } from "./NumbersPanel.tsx";
import { PlayBar } from "./PlayBar.tsx";
import { type Gutter, plotFrame } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import { RangeTools } from "./RangeTools.tsx";
import { type Drawn, ShowMenu } from "./ShowMenu.tsx";
import styles from "./TimeStrip.module.css";
import { loadedTraces, shownAtFirst, type TraceId } from "./traces.ts";
import { useFrameSize } from "./useFrameSize.ts";
import { stripKeys, useTimeView } from "./useTimeView.ts";

interface Props {
  readonly recording: Recording;
  /** The run before, drawn lighter behind this one. */
  readonly previous?: Recording | undefined;
  readonly clock: PlaybackClock;
  /** One column, touch first: a phone's sheet. */
  readonly compact: boolean;
  /** False where several strips share one clock and one set of controls. */
  readonly controls?: boolean;
  /** Offers the visible range as a file; the caller makes one of `csvChunks` or `csvText`. */
  readonly onSaveRange?: ((range: TimeRange) => void) | undefined;
}

type Tab = "forces" | "energy" | "numbers";

const FORCE_NAMES: Gutter = { wide: 184, compact: 108 };
const GUTTERS: Readonly<Record<Tab, Gutter>> = {
  forces: FORCE_NAMES,
  energy: { wide: 216, compact: 142 },
  numbers: FORCE_NAMES,
};

/** Time along the bottom of the page: what pulled how hard when, where the energy went, and the controls of playback. */
export function TimeStrip({ recording, previous, clock, compact, controls = true, onSaveRange }: Props) {
  const [tab, setTab] = useState<Tab>("forces");
  const view = useTimeView(recording, clock);
  const show = useShown(recording, previous !== undefined);
  const { ref, size } = useFrameSize<HTMLDivElement>();
  const frame = useMemo(() => plotFrame(size.width, size.height, compact, GUTTERS[tab]), [size, compact, tab]);
  const onKeyDown = useMemo(() => stripKeys(view.act), [view.act]);
  const sentence = useId();
  const laidOut = size.width > 0 && size.height > 0;
  const goTo = useMemo(() => goToEntries(show.forces, view.marks, clock.seek), [show.forces, view.marks, clock]);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: keys work wherever the focus is within the strip; each also has a button
    <div className={styles.place} onKeyDown={onKeyDown}>
      <div className={styles.strip} data-compact={compact} data-controls={controls}>
        {controls && <PlayBar clock={clock} act={view.act} measure={view.measure} />}
        <Tabs.Root className={styles.views} value={tab} onValueChange={(next: Tab) => setTab(next)}>
          <div className={styles.head}>
            <Tabs.List className={styles.tabs} aria-label="What to see over time">
              <Tabs.Tab className={styles.tab} value="forces">
                Forces
              </Tabs.Tab>
              <Tabs.Tab className={styles.tab} value="energy">
                Energy
              </Tabs.Tab>
              <Tabs.Tab className={styles.tab} value="numbers">
                Numbers
              </Tabs.Tab>
            </Tabs.List>
            <div className={styles.tools}>
              {tab !== "energy" && <ShowMenu {...show.menu} />}
              <RangeTools
                view={view}
                duration={recording.duration}
                goTo={goTo}
                onSaveRange={onSaveRange}
                compact={compact}
              />
            </div>
            <p id={sentence} className={styles.sentence}>
              {tab === "energy"
                ? energySentence(recording)
                : `${forcesSentence(recording, show.forces.reading)} ${unloadedSentence(recording)}`}
            </p>
          </div>
          <Tabs.Panel className={styles.panel} value={tab} keepMounted={false}>
            <div ref={ref} className={styles.figure} aria-describedby={sentence}>
              {laidOut && tab === "forces" && (
                <ForcesPlot
                  {...{ recording, previous, clock, view, frame, compact }}
                  forces={show.forces}
                  onHighlight={show.onHighlight}
                />
              )}
              {laidOut && tab === "energy" && <EnergyPlot {...{ recording, clock, view, frame, compact }} />}
              {tab === "numbers" && (
                <NumbersPanel {...{ recording, clock, view }} shown={show.forces.shown} reading={show.forces.reading} />
              )}
            </div>
          </Tabs.Panel>
        </Tabs.Root>
      </div>
    </div>
  );
}

/** Which traces are drawn and how: the reader's choice, kept from run to run. */
function useShown(recording: Recording, compared: boolean) {
  const [wishes, setWishes] = useState<ReadonlyMap<TraceId, boolean>>(new Map());
  const [chosen, setDrawn] = useState<Drawn | null>(null);
  const [highlight, onHighlight] = useState<string | null>(null);
  // Raw signals of one run among the traces of two would be a thicket, unless asked for.
  const drawn = chosen ?? (compared ? "filtered" : "both");
  const traces = useMemo(() => loadedTraces(recording), [recording]);
  const atFirst = useMemo(() => shownAtFirst(recording), [recording]);
  const forces = useMemo(
    (): ForceView => ({
      shown: traces.filter(({ id }) => wishes.get(id) ?? atFirst.has(id)),
      reading: drawn === "raw" ? "raw" : "filtered",
      rawBehind: drawn === "both",
      highlight: traces.find(({ id }) => id === highlight)?.id ?? null,
    }),
    [traces, atFirst, wishes, drawn, highlight],
  );
  const onShown = (id: TraceId, on: boolean) => setWishes((now) => new Map([...now, [id, on]]));
  const shown = new Set(forces.shown.map(({ id }) => id));
  return { forces, onHighlight, menu: { traces, shown, onShown, drawn, onDrawn: setDrawn } };
}
