/** Bars of the lanes laid in rows, with their labels where there is room [px]. */
import { rowsOf, type Scale } from "@secondline/figures";
import type { Lane, LaneItem } from "./lanes.ts";

export interface LaidItem {
  readonly item: LaneItem;
  readonly left: number;
  readonly width: number;
  readonly row: number;
  readonly beyond: { readonly left: number; readonly right: number };
  readonly label: { readonly x: number; readonly anchor: "start" | "middle" | "end" };
}

export interface LaidLane {
  readonly name: string;
  readonly items: readonly LaidItem[];
  readonly rows: number;
  readonly rowHeight: number;
  /** Room for the lane's name over it, where there is no margin for it [px]. */
  readonly head: number;
}

const LEAST_BAR_WIDTH = 6;
const letters = (text: string): number => text.length * 6.3 + 8;

export function layLanes(lanes: readonly Lane[], x: Scale, width: number, wide: boolean): LaidLane[] {
  return lanes.map(({ name, items }) => {
    const bars = items.filter(({ from, to }) => to >= x.from && from <= x.to).map((item) => layItem(item, x, width));
    const rows = rowsOf(
      bars.map(({ reach }) => reach),
      4,
    );
    const laid = bars.map(({ reach: _, ...bar }, i) => ({ ...bar, row: rows[i] ?? 0 }));
    return { name, items: laid, rows: Math.max(0, ...rows) + 1, rowHeight: wide ? 23 : 28, head: wide ? 0 : 18 };
  });
}

/** How far a bar that goes on out of sight is drawn beyond the edge, where it is cut off [px]. */
const CUT_BAR_LENGTH = 8;

/** The label lies in its bar if it fits, else right of the bar, else left of the bar. */
function layItem(item: LaneItem, x: Scale, edge: number) {
  const [left, right] = [x.px(Math.max(item.from, x.from)), x.px(Math.min(item.to, x.to))];
  const beyond = { left: item.from < x.from ? CUT_BAR_LENGTH : 0, right: item.to > x.to ? CUT_BAR_LENGTH : 0 };
  const width = Math.max(LEAST_BAR_WIDTH, right - left);
  const start = (left + right - width) / 2;
  const room = letters(item.label);
  const bar = { item, left: start, width, beyond };
  if (room <= width)
    return {
      ...bar,
      label: { x: start + width / 2, anchor: "middle" as const },
      // Unclipped, so that the bars keep their order while one zooms.
      reach: { from: Math.min(start, x.px(item.from)), to: Math.max(start + width, x.px(item.to)) },
    };
  if (start + width + room <= edge)
    return {
      ...bar,
      label: { x: start + width + 6, anchor: "start" as const },
      reach: { from: start, to: start + width + room },
    };
  return { ...bar, label: { x: start - 6, anchor: "end" as const }, reach: { from: start - room, to: start + width } };
}

export const lanesHeight = (lanes: readonly LaidLane[]): number =>
  lanes.reduce((sum, lane) => sum + laneHeight(lane), 0);
export const laneHeight = ({ rows, rowHeight, head }: LaidLane): number => head + rows * rowHeight + 8;
