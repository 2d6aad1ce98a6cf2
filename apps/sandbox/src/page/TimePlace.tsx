import { useMemo } from "react";
import type { PlaybackClock } from "../clock/playbackClock.ts";
import type { Theme } from "../design/palette.ts";
import { useSoon } from "../design/useSoon.ts";
import { saveTraces } from "../files/saveTraces.ts";
import { useSavePictures } from "../files/useSavePictures.ts";
import { useRecordings, useSandbox } from "../state/useSandbox.ts";
import { TimeStrip } from "../time/index.ts";
import { words } from "../words.ts";
import styles from "./TimePlace.module.css";
import { useFallIsComing } from "./useFallIsComing.ts";

interface Props {
  clock: PlaybackClock;
  theme: Theme;
  compact: boolean;
}

/** The time strip of the run in hand. */
export function TimePlace({ clock, theme, compact }: Props) {
  const { current, previous } = useRecordings();
  const compare = useSandbox((state) => state.session.compare);
  const shown = useSandbox((state) => state.run.shown);
  const told = useMemo(() => shown && { rig: shown.assessed.rig, gaveWay: shown.outcome.gaveWay }, [shown]);
  const save = useSavePictures(theme);
  const name = shown ? `${shown.assessed.rig.name} ${words.eventTitle(shown.assessed.rig, shown.whatIf)}` : "";
  const ready = useSoon(current !== undefined, 2);
  const coming = useFallIsComing();
  if (!current || !ready) {
    const words = current || coming ? "Forces over time appear here with the fall." : "There are no forces to show.";
    return <p className={styles.none}>{words}</p>;
  }
  return (
    <TimeStrip
      recording={current}
      previous={compare ? previous : undefined}
      clock={clock}
      told={told}
      compact={compact}
      onSavePlot={(plot, kind) => void save.plot(plot, kind)}
      onSaveRange={(range) => void saveTraces(current, range, name)}
    />
  );
}
