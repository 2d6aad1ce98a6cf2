import type { Scale } from "@secondline/figures";
import { laneBar, laneEnd, laneHead } from "@secondline/figures/wear";
import { formatLength } from "@secondline/words/formats";
import { sayRecord } from "@secondline/words/page/record";
import type { GrippedPart as GripEnd } from "@secondline/workbench";
import { type LaidItem, type LaidLane, laneHeight } from "@secondline/workbench/record";
import { Shapes } from "../picture/Shapes.tsx";
import styles from "./figures.module.css";
import { Grip } from "./Grip.tsx";

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
        <Shapes of={laneHead(lane.name, own, props.x, props.wide)} styles={styles} />
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
  const { item, left, width } = laid;
  const body = <Shapes of={laneBar(laid, y, height)} {...{ styles, id }} />;
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
    perUnit: x.perUnit,
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
                <Shapes of={laneEnd(at, y, height)} styles={styles} />
              </Grip>
            );
          })}
    </>
  );
}
