import type { Scale } from "@secondline/figures";
import type { WebbingState } from "@secondline/strength";
import { sayWear } from "@secondline/words/page/wear";
import type { LaneKind } from "@secondline/workbench/record";
import styles from "./figures.module.css";
import { KIND_COLOUR } from "./Patterns.tsx";
import { Unspoken } from "./Unspoken.tsx";

/** Height that the ribbon and the dimension line over it take [px]. */
export const RIBBON_HEIGHT = 78;
const RIBBON_TOP = 42;
const RIBBON_THICKNESS = 20;
/** A mark of a hand's width on a long webbing would be too thin to see [px]. */
const LEAST_MARK_WIDTH = 4;

/** The webbing itself, flat on the table, with everything that is on it on that day. */
export function Ribbon({ x, state, id, wide }: { x: Scale; state: WebbingState; id: string; wide: boolean }) {
  const { placement, from, to, marks } = state;
  const [a, b] = placement ? [x.px(placement.from), x.px(placement.to)] : [0, 0];
  return (
    <Unspoken>
      {wide && (
        <text className={styles.lane} x={0} y={RIBBON_TOP + 14}>
          {sayWear("ribbon.webbing")}
        </text>
      )}
      <g clipPath={`url(#${id}-sight)`}>
        <rect
          x={x.px(from)}
          y={RIBBON_TOP}
          width={x.px(to) - x.px(from)}
          height={RIBBON_THICKNESS}
          fill="var(--raised)"
          stroke="var(--edge)"
        />
        {placement && (
          <rect
            x={a}
            y={RIBBON_TOP}
            width={b - a}
            height={RIBBON_THICKNESS}
            fill="var(--accent-wash)"
            stroke="var(--ink)"
          />
        )}
        {marks.map((mark) => {
          const [left, right] = [x.px(mark.from), x.px(mark.to)];
          const width = Math.max(LEAST_MARK_WIDTH, right - left);
          const kind = markKind(mark.kind);
          return (
            <rect
              key={`${mark.kind} ${mark.from} ${mark.to} ${mark.since}`}
              x={(left + right - width) / 2}
              y={RIBBON_TOP}
              width={width}
              height={RIBBON_THICKNESS}
              fill={width > 8 ? `url(#${id}-${kind})` : KIND_COLOUR[kind]}
              stroke={KIND_COLOUR[kind]}
              strokeWidth={width > 8 ? 0.75 : 0}
            />
          );
        })}
        <MarkedEnd at={x.px(from)} />
      </g>
    </Unspoken>
  );
}

function markKind(kind: WebbingState["marks"][number]["kind"]): LaneKind {
  if (kind === "clampMark") return "clamp";
  if (kind === "fallZone") return "falls";
  return kind === "stitching" ? "sewn" : "damage";
}

/** A thread through the end, as the record's mark is often. */
function MarkedEnd({ at }: { at: number }) {
  return (
    <path
      d={`M${at + 3} ${RIBBON_TOP - 4}v${RIBBON_THICKNESS + 8}M${at} ${RIBBON_TOP - 4}h6`}
      stroke="var(--fails-ink)"
      strokeWidth="2"
      fill="none"
    />
  );
}
