import styles from "./DotStrip.module.css";
import { allFacts, crossingOf, type LessonRun } from "./facts.ts";
import { prose, say } from "./words.ts";

const WIDTH = 560;
const HEIGHT = 230;
const LEFT = 48;
const RIGHT = 26;
const TOP = 18;
const BOTTOM = 26;

/** The drop over the range with its band, and where it meets the limit. */
export function SweepCurve({ before, after }: { before: LessonRun; after: LessonRun }) {
  const { swept } = after;
  const crossing = crossingOf(swept);
  if (!swept) return null;
  const knob = swept.knobs[0]!;
  const points = swept.points.flatMap(({ values, curve }) => (curve ? [{ at: values[0]!, ...curve }] : []));
  const facts = allFacts(before, after);
  const top = 5 * Math.ceil(Math.max(...points.map(({ high }) => high)) / 5);
  const x = (value: number) => LEFT + ((value - knob.from) / (knob.to - knob.from)) * (WIDTH - LEFT - RIGHT);
  const y = (metre: number) => HEIGHT - BOTTOM - (metre / top) * (HEIGHT - TOP - BOTTOM);
  const path = (of: "value" | "low" | "high", list = points) =>
    list.map((one, i) => `${i === 0 ? "M" : "L"}${x(one.at)} ${y(one[of])}`).join("");
  const band = `${path("high")}${path("low", [...points].reverse()).replace("M", "L")}Z`;
  const limit = crossing?.limit.value;
  const ticks = Array.from({ length: top / 5 + 1 }, (_, i) => 5 * i);
  return (
    <figure className={styles.figure}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={crossing ? say("howFar.curve", facts) : ""}>
        {ticks.map((metre) => (
          <g key={metre}>
            <path d={`M${LEFT} ${y(metre)}H${WIDTH - RIGHT}`} className={styles.grid} />
            <text x={LEFT - 6} y={y(metre) + 4} textAnchor="end">
              {metre} m
            </text>
          </g>
        ))}
        {points.map(({ at }) => (
          <text key={at} x={x(at)} y={HEIGHT - 7} textAnchor="middle">
            {at} %
          </text>
        ))}
        <path d={band} className={styles.band} />
        <path d={path("value")} className={styles.curve} />
        {points.map(({ at, value }) => (
          <circle key={at} cx={x(at)} cy={y(value)} r="4" className={styles.dot} />
        ))}
        {limit !== undefined && crossing && (
          <>
            <path d={`M${LEFT} ${y(limit)}H${WIDTH - RIGHT}`} className={styles.limit} />
            <text x={LEFT + 6} y={y(limit) - 6}>
              {say("howFar.limit", facts)}
            </text>
            <path d={`M${x(crossing.at)} ${y(limit)}V${HEIGHT - BOTTOM}`} className={styles.limit} />
            <path
              d={`M${x(crossing.low ?? crossing.at)} ${HEIGHT - BOTTOM}H${x(crossing.high ?? crossing.at)}`}
              className={styles.interval}
            />
          </>
        )}
      </svg>
      {crossing && <figcaption>{prose("howFar.curve", facts)}</figcaption>}
    </figure>
  );
}
