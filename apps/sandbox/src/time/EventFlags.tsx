import { flagLanes, type Mark, type PlotFrame, type TimeRange, xOf } from "@secondline/figures/time";
import { sayTime } from "@secondline/words/page/time";
import type { PlaybackClock } from "@secondline/workbench";
import { useClock } from "../clock/useClock.ts";
import styles from "./Plot.module.css";
import { textWidth } from "./textWidth.ts";

interface Props {
  readonly marks: readonly Mark[];
  readonly clock: PlaybackClock;
  readonly range: TimeRange;
  readonly frame: PlotFrame;
  /** Words only: a thumb presses the surface around them, see `markUnder`. */
  readonly compact: boolean;
}

/** Room around a flag's words, the gap to the next one included [px]. */
const FLAG_PADDING = 18;

/** What happened, in words above the plot, with a hairline down to its moment. A press goes there. */
export function EventFlags({ marks, clock, range, frame, compact }: Props) {
  const visible = marks.filter((mark) => mark.time >= range.from && mark.time <= range.to);
  const places = flagLanes(
    visible.map((mark) => ({
      at: xOf(mark.time, range, frame),
      size: textWidth(mark.label) + FLAG_PADDING,
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
            {place && <FlagWords {...{ mark, clock, frame, compact, place }} x={x} />}
          </div>
        );
      })}
      <LoopBand clock={clock} range={range} frame={frame} />
    </div>
  );
}

type WordsProps = Pick<Props, "clock" | "frame" | "compact"> & {
  readonly mark: Mark;
  readonly place: { readonly lane: number; readonly left: number };
  readonly x: number;
};

function FlagWords({ mark, clock, frame, compact, place, x }: WordsProps) {
  const look = {
    className: styles.flag,
    "data-side": place.left < x - 1 ? "left" : "right",
    style: { left: place.left, top: place.lane * frame.laneHeight, height: frame.laneHeight },
  };
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
