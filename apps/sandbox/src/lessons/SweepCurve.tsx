import { allFacts, crossingOf, type LessonRun, prose, say } from "@secondline/workbench/lessons";
import styles from "./DotStrip.module.css";

const WIDTH = 560;
const HEIGHT = 230;
const LEFT_MARGIN = 48;
const RIGHT_MARGIN = 26;
const TOP_MARGIN = 18;
const BOTTOM_MARGIN = 26;

/** The drop over the range with its band, and where it meets the limit. */
export function SweepCurve({ before, after }: { before: LessonRun; after: LessonRun }) {
  const { swept } = after;
  const crossing = crossingOf(swept);
  if (!swept) return null;
  const knob = swept.knobs[0]!;
  const points = swept.points.flatMap(({ values, curve }) => (curve ? [{ at: values[0]!, ...curve }] : []));
  const facts = allFacts(before, after);
  const top = 5 * Math.ceil(Math.max(...points.map(({ high }) => high)) / 5);
  const x = (value: number) =>
    LEFT_MARGIN + ((value - knob.from) / (knob.to - knob.from)) * (WIDTH - LEFT_MARGIN - RIGHT_MARGIN);
  const y = (metre: number) => HEIGHT - BOTTOM_MARGIN - (metre / top) * (HEIGHT - TOP_MARGIN - BOTTOM_MARGIN);
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
            <path d={`M${LEFT_MARGIN} ${y(metre)}H${WIDTH - RIGHT_MARGIN}`} className={styles.grid} />
            <text x={LEFT_MARGIN - 6} y={y(metre) + 4} textAnchor="end">
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
            <path d={`M${LEFT_MARGIN} ${y(limit)}H${WIDTH - RIGHT_MARGIN}`} className={styles.limit} />
            <text x={LEFT_MARGIN + 6} y={y(limit) - 6}>
              {say("howFar.limit", facts)}
            </text>
            <path d={`M${x(crossing.at)} ${y(limit)}V${HEIGHT - BOTTOM_MARGIN}`} className={styles.limit} />
            <path
              d={`M${x(crossing.low ?? crossing.at)} ${HEIGHT - BOTTOM_MARGIN}H${x(crossing.high ?? crossing.at)}`}
              className={styles.interval}
            />
          </>
        )}
      </svg>
      {crossing && <figcaption>{prose("howFar.curve", facts)}</figcaption>}
    </figure>
  );
}
