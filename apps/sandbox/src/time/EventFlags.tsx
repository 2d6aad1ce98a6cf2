import type { PlaybackClock } from "../clock/playbackClock.ts";
import { useClock } from "../clock/useClock.ts";
import type { Mark } from "./eventMarks.ts";
import { flagLanes } from "./labelLayout.ts";
import { type PlotFrame, xOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import styles from "./TimeStrip.module.css";
import { textWidth } from "./textWidth.ts";

interface Props {
  readonly marks: readonly Mark[];
  readonly clock: PlaybackClock;
  readonly range: TimeRange;
  readonly frame: PlotFrame;
}

/** Room around a flag's words, the gap to the next one included [px]. */
const PADDING = 18;

/** What happened, in words above the plot, with a hairline down to its moment. A press goes there. */
export function EventFlags({ marks, clock, range, frame }: Props) {
  const visible = marks.filter((mark) => mark.time >= range.from && mark.time <= range.to);
  const places = flagLanes(
    visible.map((mark) => ({
      at: xOf(mark.time, range, frame),
      size: textWidth(mark.label) + PADDING,
      rank: mark.rank,
    })),
    frame.lanes,
    frame.width,
  );
  return (
    <div className={styles.flags} style={{ left: frame.left, width: frame.width, height: frame.top + frame.height }}>
      {visible.map((mark, i) => {
        const x = xOf(mark.time, range, frame);
        const place = places[i];
        const lineTop = place ? (place.lane + 1) * frame.laneHeight - 4 : frame.top - 8;
        return (
          <div key={mark.key}>
            <i
              className={place ? styles.eventLine : `${styles.eventLine} ${styles.wordless}`}
              style={{ transform: `translateX(${x}px)`, top: lineTop }}
            />
            {place && (
              <button
                type="button"
                className={styles.flag}
                data-side={place.left < x - 1 ? "left" : "right"}
                style={{ left: place.left, top: place.lane * frame.laneHeight, height: frame.laneHeight }}
                title={mark.sentence}
                aria-label={`Go to: ${mark.sentence}`}
                onClick={() => clock.seek(mark.time)}
              >
                {mark.label}
              </button>
            )}
          </div>
        );
      })}
      <LoopBand clock={clock} range={range} frame={frame} />
    </div>
  );
}

/** The stretch that playback repeats. */
function LoopBand({ clock, range, frame }: Omit<Props, "marks">) {
  const loop = useClock(clock, (state) => state.loop);
  if (loop === null) return null;
  const left = Math.max(xOf(loop.from, range, frame), 0);
  const right = Math.min(xOf(loop.to, range, frame), frame.width);
  if (right <= left) return null;
  return <i className={styles.loop} style={{ left, width: right - left, top: frame.top - 3 }} />;
}
