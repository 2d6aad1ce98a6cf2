import { piled } from "@secondline/figures";
import { allFacts, type LessonRun, prose, say } from "@secondline/workbench/lessons";
import { quantity } from "../words.ts";
import styles from "./DotStrip.module.css";

const WIDTH = 560;
const SIDE_MARGIN = 16;
const DOT_RADIUS = 5;
const AXIS_HEIGHT = 26;

/** One dot for each fall, along the load that it brought; dots that would lie on one another are piled up. */
export function DotStrip({ before, after }: { before: LessonRun; after: LessonRun }) {
  const many = [...(after.many ?? [])].sort((a, b) => a - b);
  if (many.length === 0) return null;
  const facts = allFacts(before, after);
  const [from, to] = [500 * Math.floor(many[0]! / 500), 500 * Math.ceil(many.at(-1)! / 500)];
  const x = (force: number) => SIDE_MARGIN + ((force - from) / Math.max(to - from, 1)) * (WIDTH - 2 * SIDE_MARGIN);
  const places = many.map(x);
  const levels = piled(places, 2 * DOT_RADIUS);
  const height = 2 * DOT_RADIUS * (1 + Math.max(...levels)) + AXIS_HEIGHT + 6;
  const ticks = Array.from(
    { length: Math.floor((to - from) / 1000) + 1 },
    (_, i) => 1000 * Math.ceil(from / 1000) + 1000 * i,
  );
  return (
    <figure className={styles.figure}>
      <svg viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={say("chance.dots", facts)}>
        <path d={`M${SIDE_MARGIN} ${height - AXIS_HEIGHT}H${WIDTH - SIDE_MARGIN}`} className={styles.axis} />
        {ticks
          .filter((force) => force <= to)
          .map((force) => (
            <g key={force}>
              <path d={`M${x(force)} ${height - AXIS_HEIGHT}v5`} className={styles.axis} />
              <text x={x(force)} y={height - 6} textAnchor="middle">
                {force / 1000} kN
              </text>
            </g>
          ))}
        {places.map((at, i) => (
          <circle
            // biome-ignore lint/suspicious/noArrayIndexKey: the dots are in the order of their loads
            key={i}
            cx={at}
            cy={height - AXIS_HEIGHT - 4 - DOT_RADIUS - 2 * DOT_RADIUS * levels[i]!}
            r={DOT_RADIUS - 0.5}
            className={i === places.length - 1 ? styles.hardest : styles.dot}
          />
        ))}
      </svg>
      <figcaption>{prose("chance.dots", facts)}</figcaption>
      {many.length < FALL_COUNT && <p>{say("chance.few", { count: many.length })}</p>}
      <p className="visually-hidden">
        {say("chance.list", { list: many.map((force) => quantity.load(force)).join(", ") })}
      </p>
    </figure>
  );
}

const FALL_COUNT = 30;
