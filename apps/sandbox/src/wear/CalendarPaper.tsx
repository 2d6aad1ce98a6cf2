import type { Scale } from "@secondline/figures";
import { bandLabel, stayBar } from "@secondline/figures/wear";
import { sayWear } from "@secondline/words/page/wear";
import { isoOf } from "@secondline/workbench";
import { calendarTicks, dateWords, staysOf } from "@secondline/workbench/record";
import styles from "./figures.module.css";
import { Unspoken } from "./Unspoken.tsx";

/** Height over the calendar for the day that is shown, and of the row of stays [px]. */
export const HEAD_HEIGHT = 34;
export const STAY_HEIGHT = 22;

/** Months and years. */
export function Ticks({ x, bottom, wide, width }: { x: Scale; bottom: number; wide: boolean; width: number }) {
  const ticks = calendarTicks(x.from, x.to, Math.floor(width / (wide ? 52 : 44)));
  return (
    <Unspoken>
      {ticks.map(({ day, label, year }) => (
        <g key={day}>
          <path className={year ? styles.axis : styles.rule} d={`M${x.px(day)} ${HEAD_HEIGHT}V${bottom}`} />
          <text
            x={x.px(day)}
            y={bottom + 17}
            textAnchor="middle"
            className={year ? "" : styles.soft}
            fontWeight={year ? 600 : 400}
          >
            {label}
          </text>
        </g>
      ))}
      <path className={styles.axis} d={`M${x.px(x.from)} ${bottom}H${x.px(x.to)}`} />
    </Unspoken>
  );
}

/** When it hung, as bars. */
export function Stays({
  entries,
  x,
  wide,
  today,
  id,
}: {
  entries: Parameters<typeof staysOf>[0];
  x: Scale;
  wide: boolean;
  today: number;
  id: string;
}) {
  return (
    <g>
      {wide && (
        <text className={styles.lane} x={0} y={HEAD_HEIGHT + 15}>
          {sayWear("calendarPaper.outside")}
        </text>
      )}
      {staysOf(entries).map((stay) => {
        const { from, to, label } = stay;
        const bar = stayBar(stay, x, today);
        return (
          <g key={from}>
            <title>
              {sayWear("calendarPaper.span", {
                label,
                from: dateWords(isoOf(from)),
                to: to === undefined ? sayWear("calendarPaper.now") : dateWords(isoOf(to)),
              })}
            </title>
            <rect
              x={bar.left}
              y={HEAD_HEIGHT}
              width={bar.width}
              height={STAY_HEIGHT}
              rx="2"
              fill={`url(#${id}-span)`}
              stroke="var(--soft-ink)"
            />
            {bar.label !== undefined && (
              <text className={styles.halo} x={bar.middle} y={HEAD_HEIGHT + 15} textAnchor="middle">
                {bar.label}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** A take-down date, in days since 1970, with a few words. */
export interface TakeDownMark {
  readonly day: number;
  readonly words: string;
}

/** From the take-down date on. */
export function TakeDownBand({
  x,
  mark,
  id,
  bottom,
  width,
  today,
}: {
  x: Scale;
  mark: TakeDownMark;
  id: string;
  bottom: number;
  width: number;
  today: number;
}) {
  const { day, words } = mark;
  // Where the words do not fit, the sentence beside the calendar says it as well.
  const { at, before, fits } = bandLabel(day, words, x, today, width);
  return (
    <Unspoken>
      <rect
        x={at}
        y={HEAD_HEIGHT}
        width={Math.max(2, x.px(x.to) - at)}
        height={bottom - HEAD_HEIGHT}
        fill={`url(#${id}-short)`}
        opacity="0.45"
      />
      <path d={`M${at} ${HEAD_HEIGHT - 4}V${bottom}`} stroke="var(--fails-ink)" strokeWidth="2" strokeDasharray="7 4" />
      <path d={`M${at} ${HEAD_HEIGHT + 2}l-6-10h12z`} fill="var(--fails-ink)" />
      {fits && (
        <text
          className={styles.halo}
          x={before ? at - 8 : at + 8}
          y={HEAD_HEIGHT + 15}
          textAnchor={before ? "end" : "start"}
          style={{ fill: "var(--fails-ink)" }}
          fontWeight="600"
        >
          {words}
        </text>
      )}
    </Unspoken>
  );
}
