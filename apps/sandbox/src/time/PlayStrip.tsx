import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useClock } from "../clock/useClock.ts";
import { Button } from "../design/Button.tsx";
import { RangeSlider } from "../design/RangeSlider.tsx";
import { quantity } from "../words.ts";
import styles from "./PlayStrip.module.css";
import { SpeedChoice } from "./SpeedChoice.tsx";
import { useClockKeys } from "./useClockKeys.ts";

/** Text and thumb follow the clock this often [ms]. */
const FOLLOW_INTERVAL_MS = 50;
/** Play, pause, scrub and speed in one line, for views where several pictures or a single one share a clock. */
export function PlayStrip({ clock }: { clock: PlaybackClock }) {
  useClockKeys(clock);
  const playing = useClock(clock, (state) => state.playing);
  const duration = useClock(clock, (state) => state.duration);
  const time = useClock(clock, (state) => state.time, FOLLOW_INTERVAL_MS);
  return (
    <section className={styles.strip} aria-label={sayTime("playBar.playback")} data-playback>
      <Button
        tone="filled"
        icon={playing ? "pause" : "play"}
        iconOnly
        label={playing ? sayTime("playBar.pause") : sayTime("playBar.play")}
        disabled={duration === 0}
        onClick={clock.toggle}
      />
      <div className={styles.scrub}>
        <RangeSlider
          label={sayTime("scrubSurface.timeRun")}
          value={time}
          min={0}
          max={Math.max(duration, 0.01)}
          step={0.01}
          say={(value) => quantity.seconds(value)}
          onChange={(next) => {
            clock.pause();
            clock.seek(next);
          }}
        />
      </div>
      <span className={styles.time}>{quantity.seconds(time)}</span>
      <SpeedChoice clock={clock} />
    </section>
  );
}
