import { alongRibbon, RIBBON_WIDTH, ribbonHeight } from "@secondline/figures/lessons";
import type { PlaybackClock } from "@secondline/workbench";
import { alongLine, carriedAt, type LessonRun, say } from "@secondline/workbench/lessons";
import { useClock } from "../clock/useClock.ts";
import { LookedAt } from "../picture/LookedAt.tsx";
import { quantity } from "../words.ts";
import styles from "./AlongRibbon.module.css";
import { usePictureWidth } from "./usePictureWidth.ts";

/** The line follows the clock this often [ms]. */
const FOLLOW_INTERVAL_MS = 50;

/** Strength along the main line with its clamp mark on it, and the load that passes it as the fall goes on. */
export function AlongRibbon({ run, clock }: { run: LessonRun; clock: PlaybackClock }) {
  const time = useClock(clock, (state) => state.time, FOLLOW_INTERVAL_MS);
  const line = alongLine(run);
  const { ref, width } = usePictureWidth(RIBBON_WIDTH);
  const loads = carriedAt(run.recording, time, line.length);
  const { mark } = line;
  const here = mark && loads.find(({ to }) => to >= mark.middle)?.force;
  const onMark =
    mark && here !== undefined
      ? say("ribbon.mark", { strength: quantity.strength(mark.strength5), load: quantity.load(here) })
      : undefined;
  const words = { holds: say("ribbon.holds"), carries: say("ribbon.carries"), mark: onMark };
  return (
    <figure className={styles.figure}>
      <figcaption className={styles.title}>{say("ribbon.title", { time: quantity.seconds(time) })}</figcaption>
      <div ref={ref}>
        <LookedAt
          of={alongRibbon({ width, ...line, loads, words })}
          width={width}
          height={ribbonHeight(width)}
          styles={styles}
          label={say("ribbon.label")}
        />
      </div>
    </figure>
  );
}
