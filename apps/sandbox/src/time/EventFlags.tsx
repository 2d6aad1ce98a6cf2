import {
  type EventMark,
  type LaidFlag,
  laidFlags,
  type PlotFrame,
  type TimeRange,
  xOf,
} from "@secondline/figures/time";
import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useClock } from "../clock/useClock.ts";
import styles from "./Plot.module.css";
import { axisTextWidth } from "./textWidth.ts";

interface Props {
  readonly marks: readonly EventMark[];
  readonly clock: PlaybackClock;
  readonly range: TimeRange;
  readonly frame: PlotFrame;
  /** Words only: a thumb presses the surface around them, see `markUnder`. */
  readonly compact: boolean;
}

/** What happened, in words above the plot, with a hairline down to its moment. A press goes there. */
export function EventFlags({ marks, clock, range, frame, compact }: Props) {
  return (
    <div className={styles.flags} style={{ left: frame.left, width: frame.width, height: frame.top + frame.height }}>
      {laidFlags(marks, range, frame, axisTextWidth).map((flag) => (
        <div key={flag.mark.key}>
          <i
            className={flag.words ? styles.eventLine : `${styles.eventLine} ${styles.wordless}`}
            style={{ transform: `translateX(${flag.x}px)`, top: flag.lineTop }}
          />
          <FlagWords {...flag} {...{ clock, frame, compact }} />
        </div>
      ))}
      <LoopBand clock={clock} range={range} frame={frame} />
    </div>
  );
}

type WordsProps = Pick<Props, "clock" | "frame" | "compact"> & Pick<LaidFlag, "mark" | "words">;

function FlagWords({ mark, clock, frame, compact, words }: WordsProps) {
  if (!words) return null;
  const { side, ...place } = words;
  const look = { className: styles.flag, "data-side": side, style: { ...place, height: frame.laneHeight } };
  if (compact) return <span {...look}>{mark.label}</span>;
  const goThere = () => clock.seek(mark.time);
  return (
    <button
      {...look}
      type="button"
      title={mark.sentence}
      aria-label={sayTime("eventFlags.go", { sentence: mark.sentence })}
      onClick={goThere}
    >
      {mark.label}
    </button>
  );
}

/** The stretch that playback repeats. */
function LoopBand({ clock, range, frame }: Omit<Props, "marks" | "compact">) {
  const loop = useClock(clock, (state) => state.loop);
  if (loop === null) return null;
  const left = Math.max(xOf(loop.from, range, frame), 0);
  const right = Math.min(xOf(loop.to, range, frame), frame.width);
  if (right <= left) return null;
  return <i className={styles.loop} style={{ left, width: right - left, top: frame.top - 3 }} />;
}
