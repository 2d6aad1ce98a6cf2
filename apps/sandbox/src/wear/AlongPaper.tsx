import { roundTicks, type Scale } from "@secondline/figures";
import { spanDimension } from "@secondline/figures/wear";
import type { WebbingState } from "@secondline/strength";
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

interface DimensionProps {
  x: Scale;
  placement: NonNullable<WebbingState["placement"]>;
  y: number;
}

/** The span's length over its middle. */
function Dimension({ x, placement, y }: DimensionProps) {
  const { path, texts } = spanDimension(placement, x, y);
  return (
    <>
      {path !== undefined && <path d={path} stroke="var(--ink)" fill="none" />}
      {texts.map(({ x: at, anchor, words }) => (
        <text key={anchor} className={`${styles.serif} ${styles.halo}`} x={at} y={y + 4} textAnchor={anchor}>
          {words}
        </text>
      ))}
    </>
  );
}
