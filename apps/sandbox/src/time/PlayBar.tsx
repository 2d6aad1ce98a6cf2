import { quantity } from "@secondline/words";
import { sayTime } from "@secondline/words/page/time";
import { type KeyAction, type PlaybackClock, SPEEDS, type Speed } from "@secondline/workbench";
import type { ComponentProps } from "react";
import { useClock } from "../clock/useClock.ts";
import { Choice } from "../design/Choice.tsx";
import { TimeButton } from "./TimeButton.tsx";
import styles from "./TimeStrip.module.css";

interface Props {
  readonly clock: PlaybackClock;
  readonly act: (action: KeyAction) => void;
  readonly measure: number | null;
  /** One row for a phone: the page's own bar plays there, and the strip's menu repeats and measures. */
  readonly compact: boolean;
}

interface StepButton extends Pick<ComponentProps<typeof TimeButton>, "icon" | "name" | "keyName"> {
  readonly action: KeyAction;
}
const BACK: readonly StepButton[] = [
  { icon: "markBack", name: sayTime("playBar.eventBefore"), keyName: "[", action: { do: "mark", direction: -1 } },
  { icon: "frameBack", name: sayTime("playBar.frameBack"), keyName: ",", action: { do: "frame", direction: -1 } },
];
const ON: readonly StepButton[] = [
  { icon: "frameOn", name: sayTime("playBar.frameOn"), keyName: ".", action: { do: "frame", direction: 1 } },
  { icon: "markOn", name: sayTime("playBar.nextEvent"), keyName: "]", action: { do: "mark", direction: 1 } },
];

/** Play, step, jump, speed and repeat, with the time itself. */
export function PlayBar({ clock, act, measure, compact }: Props) {
  const playing = useClock(clock, (state) => state.playing);
  const looping = useClock(clock, (state) => state.loop !== null);
  const speed = useClock(clock, (state) => state.speed);
  const step = ({ action, ...look }: StepButton) => (
    <TimeButton key={look.icon} {...look} onPress={() => act(action)} />
  );
  return (
    <section className={styles.playBar} aria-label={sayTime("playBar.playback")}>
      <TimeReadout clock={clock} measure={measure} />
      <div className={styles.playRow}>
        {BACK.map(step)}
        {!compact && (
          <TimeButton
            icon={playing ? "pause" : "play"}
            name={playing ? sayTime("playBar.pause") : sayTime("playBar.play")}
            keyName="Space"
            tone="filled"
            worded
            onPress={() => act({ do: "toggle" })}
          />
        )}
        {ON.map(step)}
      </div>
      <div className={styles.speedRow}>
        <Choice<string>
          inline
          label={sayTime("playBar.speed")}
          value={String(speed)}
          options={SPEED_OPTIONS}
          onChange={(value) => clock.setSpeed(SPEEDS.find((known) => String(known) === value) ?? speed)}
        />
        {!compact && (
          <>
            <TimeButton
              icon="loop"
              name={sayTime("playBar.repeat")}
              keyName="L"
              worded
              pressed={looping}
              onPress={() => act({ do: "loop" })}
            />
            <TimeButton
              icon="measure"
              name={sayTime("playBar.measure")}
              keyName="M"
              worded
              pressed={measure !== null}
              onPress={() => act({ do: "measure" })}
            />
          </>
        )}
      </div>
    </section>
  );
}

const SPEED_OPTIONS = SPEEDS.map((speed) => ({ value: String(speed), label: speedWords(speed) }));

function speedWords(speed: Speed): string {
  return sayTime("playBar.speedOf", { speed, share: Math.round(1 / speed) });
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
