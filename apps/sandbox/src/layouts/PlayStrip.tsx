import { sayLayouts } from "@secondline/words/page/layouts";
import { type PlaybackClock, SPEEDS, type Speed } from "@secondline/workbench";
import { useClock } from "../clock/useClock.ts";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { RangeSlider } from "../design/RangeSlider.tsx";
import { useClockKeys } from "../time/useClockKeys.ts";
import { quantity } from "../words.ts";
import styles from "./PlayStrip.module.css";

/** Text and thumb follow the clock this often [ms]. */
const FOLLOW_INTERVAL_MS = 50;
const SPEED_OPTIONS = SPEEDS.map((speed) => ({
  value: String(speed),
  label: sayLayouts("playStrip.speedOf", { speed, share: Math.round(1 / speed) }),
}));

/** Play, pause, scrub and speed in one line, for views where several pictures or a single one share a clock. */
export function PlayStrip({ clock }: { clock: PlaybackClock }) {
  useClockKeys(clock);
  const playing = useClock(clock, (state) => state.playing);
  const speed = useClock(clock, (state) => state.speed);
  const duration = useClock(clock, (state) => state.duration);
  const time = useClock(clock, (state) => state.time, FOLLOW_INTERVAL_MS);
  return (
    <section className={styles.strip} aria-label={sayLayouts("playStrip.playback")} data-playback>
      <Button
        tone="filled"
        icon={playing ? "pause" : "play"}
        iconOnly
        label={playing ? sayLayouts("playStrip.pause") : sayLayouts("playStrip.play")}
        disabled={duration === 0}
        onClick={clock.toggle}
      />
      <div className={styles.scrub}>
        <RangeSlider
          label={sayLayouts("playStrip.timeRun")}
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
      <Choice<string>
        compact
        label={sayLayouts("playStrip.speed")}
        value={String(speed)}
        options={SPEED_OPTIONS}
        onChange={(value) => clock.setSpeed(SPEEDS.find((known) => String(known) === value) ?? (speed as Speed))}
      />
    </section>
  );
}
