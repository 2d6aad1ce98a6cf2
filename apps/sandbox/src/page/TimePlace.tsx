import type { PlaybackClock } from "../clock/playbackClock.ts";
import { saveTraces } from "../files/saveTraces.ts";
import { useRecordings, useSandbox } from "../state/useSandbox.ts";
import { TimeStrip } from "../time/TimeStrip.tsx";
import styles from "./TimePlace.module.css";

/** The time strip of the run in hand. */
export function TimePlace({ clock, compact }: { clock: PlaybackClock; compact: boolean }) {
  const { current, previous } = useRecordings();
  const compare = useSandbox((state) => state.session.compare);
  const shown = useSandbox((state) => state.run.shown);
  const name = shown?.rig.name ?? "";
  if (!current) return <p className={styles.none}>Forces over time appear here with the fall.</p>;
  return (
    <TimeStrip
      recording={current}
      previous={compare ? previous : undefined}
      clock={clock}
      compact={compact}
      onSaveRange={(range) => void saveTraces(current, range, `${name} ${shown?.outcome.title ?? ""}`)}
    />
  );
}
