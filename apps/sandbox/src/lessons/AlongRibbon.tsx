import type { PlaybackClock } from "@secondline/workbench";
import { alongLine, carriedAt, type LessonRun, say } from "@secondline/workbench/lessons";
import { useClock } from "../clock/useClock.ts";
import { quantity } from "../words.ts";
import styles from "./AlongRibbon.module.css";

const WIDTH = 640;
const HEIGHT = 132;
const LEFT_MARGIN = 44;
const TOP_MARGIN = 22;
const BOTTOM_MARGIN = 26;
/** The line follows the clock this often [ms]. */
const FOLLOW_INTERVAL_MS = 50;

/** Strength along the main line with its clamp mark on it, and the load that passes it as the fall goes on. */
export function AlongRibbon({ run, clock }: { run: LessonRun; clock: PlaybackClock }) {
  const time = useClock(clock, (state) => state.time, FOLLOW_INTERVAL_MS);
  const line = alongLine(run);
  if (!line) return null;
  const { zones, length, top, mark } = line;
  const x = (metre: number) => LEFT_MARGIN + (metre / length) * (WIDTH - LEFT_MARGIN - 12);
  const y = (force: number) => HEIGHT - BOTTOM_MARGIN - (force / top) * (HEIGHT - TOP_MARGIN - BOTTOM_MARGIN);
  const loads = carriedAt(run.recording, time, length);
  const here = mark && loads.find(({ to }) => to >= mark.middle)?.force;
  const holds = zones
    .map(({ to, strength5 }, i) => `${i === 0 ? `M${x(0)} ${y(strength5)}` : `V${y(strength5)}`}H${x(to)}`)
    .join("");
  const carried = loads
    .map(({ from, to, force }, i) => `${i === 0 ? "M" : "L"}${x((from + to) / 2)} ${y(force)}`)
    .join("");
  const ticks = [0, 10_000, 20_000, 30_000].filter((force) => force <= top);
  return (
    <figure className={styles.figure}>
      <figcaption className={styles.title}>{say("ribbon.title", { time: quantity.seconds(time) })}</figcaption>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={say("ribbon.label")}>
        {ticks.map((force) => (
          <g key={force}>
            <path d={`M${LEFT_MARGIN} ${y(force)}H${WIDTH - 12}`} className={styles.grid} />
            <text x={LEFT_MARGIN - 6} y={y(force) + 4} textAnchor="end">
              {force / 1000} kN
            </text>
          </g>
        ))}
        {mark && (
          <rect
            x={x(mark.from)}
            y={TOP_MARGIN}
            width={Math.max(6, x(mark.to) - x(mark.from))}
            height={HEIGHT - TOP_MARGIN - BOTTOM_MARGIN}
            className={styles.mark}
          />
        )}
        <path d={holds} className={styles.holds} />
        <path d={carried} className={styles.carries} />
        {mark && here !== undefined && (
          <text x={x(mark.to) + 8} y={TOP_MARGIN - 8} className={styles.strong}>
            {say("ribbon.mark", { strength: quantity.strength(mark.strength5), load: quantity.load(here) })}
          </text>
        )}
        <text x={LEFT_MARGIN} y={HEIGHT - 8}>
          A
        </text>
        <text x={WIDTH - 12} y={HEIGHT - 8} textAnchor="end">
          B
        </text>
        <path d={`M${LEFT_MARGIN + 60} ${HEIGHT - 12}h24`} className={styles.holds} />
        <text x={LEFT_MARGIN + 90} y={HEIGHT - 8}>
          {say("ribbon.holds")}
        </text>
        <path d={`M${LEFT_MARGIN + 340} ${HEIGHT - 12}h24`} className={styles.carries} />
        <text x={LEFT_MARGIN + 370} y={HEIGHT - 8}>
          {say("ribbon.carries")}
        </text>
      </svg>
    </figure>
  );
}
