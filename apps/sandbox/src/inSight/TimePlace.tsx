import type { Recording } from "@secondline/engine";
import type { TimeRange } from "@secondline/figures/time";
import { sayPage } from "@secondline/words/page/page";
import { outcomeOf, type PlaybackClock, type SandboxState, shownName } from "@secondline/workbench";
import { lazy, useDeferredValue, useMemo } from "react";
import { Later } from "../design/Later.tsx";
import type { Theme } from "../design/palette.ts";
import { useSoon } from "../design/useSoon.ts";
import { useSavePictures } from "../files/useSavePictures.ts";
import { useActions, useRecordings, useSandbox } from "../state/useSandbox.ts";
import styles from "./TimePlace.module.css";
import { useFallIsComing } from "./useFallIsComing.ts";

// Plots are a good part of all code, and there is nothing to plot before the first fall.
const TimeStrip = lazy(async () => ({ default: (await import("../time/TimeStrip.tsx")).TimeStrip }));

interface Props {
  clock: PlaybackClock;
  theme: Theme;
  compact: boolean;
}

/** What the strip shows, all of one moment. */
function useStripShown() {
  const { current, previous } = useRecordings();
  const compare = useSandbox((state) => state.session.compare);
  const shown = useSandbox((state) => state.run.shown);
  const band = useSandbox(bandOf);
  return useMemo(
    () =>
      current && {
        recording: current,
        previous: compare ? previous : undefined,
        band,
        told: shown && { rig: shown.assessed.rig, gaveWay: shown.outcome.gaveWay },
        name: shown ? shownName(shown) : "",
      },
    [current, previous, compare, shown, band],
  );
}

/** The time strip of the current run. */
export function TimePlace({ clock, theme, compact }: Props) {
  const now = useStripShown();
  // A new fall is drawn in the scene and told first; its traces come in a task of their own.
  const strip = useDeferredValue(now);
  const save = useSavePictures(theme);
  const { tell } = useActions();
  async function saveRange(recording: Recording, range: TimeRange, name: string): Promise<void> {
    const saving = await import("../files/saveTraces.ts").catch(() => undefined);
    if (saving) void saving.saveTraces(recording, range, name);
    else tell({ tone: "fault", text: sayPage("timePlace.writerMissing") });
  }
  const ready = useSoon(now !== undefined, 2);
  const coming = useFallIsComing();
  const comes = <p className={styles.none}>{sayPage("timePlace.coming")}</p>;
  if (!strip || !ready) return now || coming ? comes : <p className={styles.none}>{sayPage("timePlace.none")}</p>;
  const { name, ...run } = strip;
  return (
    <Later what={sayPage("timePlace.part")} fallback={comes}>
      <TimeStrip
        {...run}
        {...{ clock, compact }}
        onSavePlot={(plot, kind) => void save.plot(plot, kind)}
        onSaveRange={(range) => void saveRange(run.recording, range, name)}
      />
    </Later>
  );
}

/** The band of the what-if in sight, from the verdict of the same state. */
function bandOf(state: SandboxState) {
  const { shown } = state.run;
  if (shown?.key !== state.assessment.key) return undefined;
  return outcomeOf(state)?.whatIfs.find(({ key }) => key === shown.outcome.key)?.band;
}
