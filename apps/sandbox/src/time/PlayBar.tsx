import { quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import type { KeyAction, PlaybackClock } from "@secondline/workbench";
import { useClock } from "../clock/useClock.ts";
import { Button } from "../design/Button.tsx";
import type { IconName } from "../design/icons.tsx";
import { SpeedChoice } from "./SpeedChoice.tsx";
import styles from "./TimeStrip.module.css";

interface Props {
  readonly clock: PlaybackClock;
  readonly act: (action: KeyAction) => void;
  readonly measure: number | null;
  /** One row for a phone: the page's own bar plays there, and the strip's menu repeats and measures. */
  readonly compact: boolean;
}

interface Step {
  readonly icon: IconName;
  readonly label: string;
  readonly keyName: string;
  readonly action: KeyAction;
}
const BACK: readonly Step[] = [
  { icon: "markBack", label: sayTime("playBar.eventBefore"), keyName: "[", action: { do: "mark", direction: -1 } },
  { icon: "left", label: sayTime("playBar.frameBack"), keyName: ",", action: { do: "frame", direction: -1 } },
];
const ON: readonly Step[] = [
  { icon: "right", label: sayTime("playBar.frameOn"), keyName: ".", action: { do: "frame", direction: 1 } },
  { icon: "markOn", label: sayTime("playBar.nextEvent"), keyName: "]", action: { do: "mark", direction: 1 } },
];

/** Play, step, jump, speed and repeat, with the time itself. */
export function PlayBar({ clock, act, measure, compact }: Props) {
  const playing = useClock(clock, (state) => state.playing);
  const looping = useClock(clock, (state) => state.loop !== null);
  const step = ({ action, ...look }: Step) => (
    <Button key={look.icon} tone="quiet" iconOnly {...look} onClick={() => act(action)} />
  );
  return (
    <section className={styles.playBar} aria-label={sayTime("playBar.playback")}>
      <TimeReadout clock={clock} measure={measure} />
      <div className={styles.playRow}>
        {BACK.map(step)}
        {!compact && (
          <Button
            tone="filled"
            icon={playing ? "pause" : "play"}
            label={playing ? sayTime("playBar.pause") : sayTime("playBar.play")}
            keyName="Space"
            onClick={() => act({ do: "toggle" })}
          />
        )}
        {ON.map(step)}
      </div>
      <div className={styles.speedRow}>
        <SpeedChoice clock={clock} inline />
        {!compact && (
          <>
            <Button
              tone="quiet"
              icon="loop"
              label={sayTime("playBar.repeat")}
              keyName="L"
              pressed={looping}
              onClick={() => act({ do: "loop" })}
            />
            <Button
              tone="quiet"
              icon="measure"
              label={sayTime("playBar.measure")}
              keyName="M"
              pressed={measure !== null}
              onClick={() => act({ do: "measure" })}
            />
          </>
        )}
      </div>
    </section>
  );
}

/** Where the cursor stands, in large figures, and how far that is from the second cursor. */
function TimeReadout({ clock, measure }: Pick<Props, "clock" | "measure">) {
  const time = useClock(clock, (state) => state.time);
  const duration = useClock(clock, (state) => state.duration);
  return (
    <p className={styles.readout}>
      <span className={styles.bigTime}>{quantity.seconds(time, 3)}</span>
      <span className={styles.ofRun}>
        {measure === null
          ? sayTime("playBar.of", { seconds: quantity.seconds(duration) })
          : `${time >= measure ? "+" : ""}${quantity.seconds(time - measure, 3)}`}
      </span>
    </p>
  );
}
