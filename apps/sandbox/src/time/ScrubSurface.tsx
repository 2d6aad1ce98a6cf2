import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock, ScrubTarget } from "@secondline/workbench";
import { useEffect, useRef, useState } from "react";
import styles from "./Plot.module.css";
import { listenForScrubbing } from "./scrubGesture.ts";

interface Props extends ScrubTarget {
  /** The cursor's time and the values there, in words. */
  readonly describe: (time: number) => string;
}

/** The plot area as a thing to scrub, and as a slider for keys and screen readers. */
export function ScrubSurface(props: Props) {
  const { clock, duration, frame, above, describe } = props;
  const surface = useRef<HTMLDivElement>(null);
  const latest = useRef(props);
  latest.current = props;
  useEffect(() => listenForScrubbing(surface.current!, () => latest.current), []);
  const time = useSettledTime(clock);
  return (
    <div
      ref={surface}
      className={styles.surface}
      style={{ left: frame.left, top: frame.top - above, width: frame.width, height: frame.height + above }}
      role="slider"
      tabIndex={0}
      aria-label={sayTime("scrubSurface.timeRun")}
      aria-valuemin={0}
      aria-valuemax={duration}
      aria-valuenow={Math.min(time, duration)}
      aria-valuetext={describe(time)}
    />
  );
}

/** A time is told when it has stood still for so long, so that a screen reader is not flooded [ms]. */
const SETTLED_MS = 250;

function useSettledTime(clock: PlaybackClock): number {
  const [time, setTime] = useState(() => clock.getSnapshot().time);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const unsubscribe = clock.subscribe(() => {
      clearTimeout(timer);
      timer = setTimeout(() => setTime(clock.getSnapshot().time), SETTLED_MS);
    });
    return () => {
      clearTimeout(timer);
      unsubscribe();
    };
  }, [clock]);
  return time;
}
