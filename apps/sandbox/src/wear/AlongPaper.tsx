import { roundTicks, type Scale } from "@secondline/figures";
import type { WebbingState } from "@secondline/strength";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import styles from "./figures.module.css";
import { Unspoken } from "./Unspoken.tsx";

/** Metres from the marked end, under everything. */
export function Grid({ x, top, bottom, width }: { x: Scale; top: number; bottom: number; width: number }) {
  const ticks = roundTicks(x.from, x.to, Math.max(3, Math.floor((x.px(x.to) - x.px(x.from)) / 70)));
  return (
    <Unspoken>
      {ticks.map((tick) => (
        <g key={tick}>
          <path className={styles.rule} d={`M${x.px(tick)} ${top}V${bottom}`} />
          <text x={x.px(tick)} y={bottom + 16} textAnchor="middle" className={styles.soft}>
            {tick}
          </text>
        </g>
      ))}
      <path className={styles.axis} d={`M${x.px(x.from)} ${bottom}H${x.px(x.to)}`} />
      <text x={Math.min(x.px(x.from), width - 190)} y={bottom + 34} className={styles.soft}>
        {sayWear("alongPaper.axis")}
      </text>
    </Unspoken>
  );
}

interface SpanProps {
  x: Scale;
  state: WebbingState;
  top: number;
  bottom: number;
  id: string;
}

/** What does not lie in the loaded span is shaded; the span's ends run through all lanes, or are told at the edge. */
export function SpanShade({ x, state, top, bottom, id }: SpanProps) {
  const { placement, to } = state;
  if (!placement) return null;
  const shade = { y: top + 16, height: bottom - top - 16, fill: `url(#${id}-off)` };
  const ends = [placement.from, placement.to].filter((end) => end >= x.from && end <= x.to);
  return (
    <Unspoken>
      <g clipPath={`url(#${id}-sight)`}>
        <rect x={x.px(0)} width={Math.max(0, x.px(placement.from) - x.px(0))} {...shade} />
        <rect x={x.px(placement.to)} width={Math.max(0, x.px(to) - x.px(placement.to))} {...shade} />
      </g>
      {ends.map((end) => (
        <path
          key={end}
          d={`M${x.px(end)} ${top}V${bottom}`}
          stroke="var(--ink)"
          strokeWidth="1.25"
          strokeDasharray="1 3"
          fill="none"
          strokeLinecap="round"
        />
      ))}
      <Dimension {...{ x, placement }} y={top - 8} />
    </Unspoken>
  );
}

type Placement = NonNullable<WebbingState["placement"]>;

/** The span's length over its middle; an end that is out of sight is named at the edge it lies beyond. */
function Dimension({ x, placement, y }: { x: Scale; placement: Placement; y: number }) {
  const { from, to, markedEnd } = placement;
  const names = markedEnd === "A" ? (["A", "B"] as const) : (["B", "A"] as const);
  const [left, right] = [x.px(x.from), x.px(x.to)];
  const beyond = {
    left: from < x.from ? sayWear("alongPaper.endBefore", { anchor: names[0], place: formatLength(from) }) : "",
    right: to > x.to ? sayWear("alongPaper.endBeyond", { anchor: names[1], place: formatLength(to) }) : "",
  };
  // Out of sight altogether: all of it lies on one side.
  if (to < x.from || from > x.to) {
    const before = to < x.from;
    const words = sayWear("alongPaper.loadedFrom", {
      before: before ? "◂ " : "",
      from: formatLength(from),
      to: formatLength(to),
      after: before ? "" : " ▸",
    });
    return (
      <text
        className={`${styles.serif} ${styles.halo}`}
        x={before ? left : right}
        y={y + 4}
        textAnchor={before ? "start" : "end"}
      >
        {words}
      </text>
    );
  }
  const room = (words: string) => (words === "" ? 0 : words.length * 7 + 6);
  const [a, b] = [Math.max(left + room(beyond.left), x.px(from)), Math.min(right - room(beyond.right), x.px(to))];
  const whole = beyond.left === "" && beyond.right === "";
  const length = sayWear("alongPaper.loaded", { length: formatLength(to - from) });
  const words = whole ? sayWear("alongPaper.between", { length, left: names[0], right: names[1] }) : length;
  const [middle, half] = [(a + b) / 2, words.length * 3.6 + 8];
  const fits = 2 * half < b - a;
  const tip = (at: number, way: 1 | -1) => `M${at + way * 6} ${y - 3}l${-way * 6} 3 ${way * 6} 3M${at} ${y - 5}v10`;
  return (
    <>
      <path
        d={`${fits ? `M${a} ${y}H${middle - half}M${middle + half} ${y}H${b}` : `M${a} ${y}H${b}`}${beyond.left ? "" : tip(a, 1)}${beyond.right ? "" : tip(b, -1)}`}
        stroke="var(--ink)"
        fill="none"
      />
      {fits && (
        <text className={`${styles.serif} ${styles.halo}`} x={middle} y={y + 4} textAnchor="middle">
          {words}
        </text>
      )}
      <text className={`${styles.serif} ${styles.halo}`} x={left} y={y + 4}>
        {beyond.left}
      </text>
      <text className={`${styles.serif} ${styles.halo}`} x={right} y={y + 4} textAnchor="end">
        {beyond.right}
      </text>
    </>
  );
}
