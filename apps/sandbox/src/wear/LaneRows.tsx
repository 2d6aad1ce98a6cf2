import type { Scale } from "@secondline/figures";
import { formatLength } from "@secondline/words/formats";
import { sayRecord } from "@secondline/words/page/record";
import type { Grip as GripEnd } from "@secondline/workbench";
import { type LaidItem, type LaidLane, laneHeight } from "@secondline/workbench/record";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";
import { KIND_COLOUR } from "./Patterns.tsx";

interface Props {
  lanes: readonly LaidLane[];
  top: number;
  x: Scale;
  id: string;
  wide: boolean;
  chosen: number | undefined;
  length: number;
  onBegin: (entry: number) => void;
  onBy: (metres: number, end: GripEnd) => void;
  onEnd: () => void;
}

export function LaneRows(props: Props) {
  let y = props.top;
  return props.lanes.map((lane) => {
    const own = y;
    y += laneHeight(lane);
    return (
      <g key={lane.name}>
        <path className={styles.rule} d={`M0 ${own - 1}H${props.x.px(props.x.to)}`} />
        <text className={`${styles.lane} ${styles.halo}`} x={0} y={own + (props.wide ? 17 : 14)}>
          {lane.name}
        </text>
        {lane.items.map((laid) => (
          <Item
            key={laid.item.key}
            {...props}
            laid={laid}
            y={own + lane.head + 4 + laid.row * lane.rowHeight}
            height={lane.rowHeight - 6}
          />
        ))}
      </g>
    );
  });
}

function Item({
  laid,
  y,
  height,
  x,
  id,
  chosen,
  length,
  onBegin,
  onBy,
  onEnd,
}: Omit<Props, "lanes" | "top"> & { laid: LaidItem; y: number; height: number }) {
  const { item, left, width, label, beyond } = laid;
  const colour = KIND_COLOUR[item.kind];
  const body = (
    <>
      {/* A still thinner bar could not be hit. */}
      <rect
        x={left - Math.max(0, 24 - width) / 2}
        y={y - 3}
        width={Math.max(24, width)}
        height={height + 6}
        fill="transparent"
      />
      <rect
        x={left - beyond.left}
        y={y}
        width={width + beyond.left + beyond.right}
        height={height}
        clipPath={beyond.left + beyond.right > 0 ? `url(#${id}-sight)` : undefined}
        rx="2"
        fill={width > 8 ? `url(#${id}-${item.kind})` : colour}
        stroke={colour}
        className={item.later ? styles.later : ""}
      />
      <rect className={styles.focus} x={left - 3} y={y - 3} width={width + 6} height={height + 6} rx="4" />
      <text className={styles.halo} x={label.x} y={y + height / 2 + 4} textAnchor={label.anchor}>
        {item.label}
      </text>
    </>
  );
  const { entry } = item;
  if (entry === undefined) {
    return (
      <g>
        <title>{item.name}</title>
        {body}
      </g>
    );
  }
  const middle = (item.from + item.to) / 2;
  const common = {
    min: 0,
    max: length,
    step: 0.1,
    bigStep: 1,
    perUnit: (x.px(x.to) - x.px(x.from)) / (x.to - x.from),
    onEnd,
    onBegin: () => onBegin(entry),
  };
  const isChosen = chosen === entry;
  return (
    <>
      <Grip
        {...common}
        label={item.name}
        text={sayRecord("laneRows.stretch", { from: formatLength(item.from), to: formatLength(item.to) })}
        value={middle}
        onBy={(by) => onBy(by, "whole")}
        className={isChosen ? styles.chosen! : ""}
        data={`place ${entry}`}
      >
        {body}
      </Grip>
      {isChosen &&
        item.ends &&
        (["from", "to"] as const)
          .filter((end) => item[end] >= x.from && item[end] <= x.to)
          .map((end) => {
            const at = end === "from" ? left : left + width;
            return (
              <Grip
                {...common}
                key={end}
                label={end === "from" ? sayRecord("laneRows.beginning") : sayRecord("laneRows.end")}
                text={formatLength(item[end])}
                value={item[end]}
                onBy={(by) => onBy(by, end)}
                className={styles.end!}
              >
                <rect x={at - 12} y={y - 3} width={24} height={height + 6} fill="transparent" />
                <rect className={styles.focus} x={at - 6} y={y - 5} width={12} height={height + 10} rx="4" />
                <rect
                  x={at - 3}
                  y={y - 2}
                  width={6}
                  height={height + 4}
                  rx="3"
                  fill="var(--raised)"
                  stroke="var(--accent)"
                  strokeWidth="2"
                />
              </Grip>
            );
          })}
    </>
  );
}
