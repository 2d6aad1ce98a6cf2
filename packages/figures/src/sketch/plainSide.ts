/** A side view of a rig from its document: rock, anchors, the straight line between them, heights at the rim. */
import { quantity } from "@secondline/words";
import { circle, group, path, type Shape, text } from "../shapes/shape.ts";

export interface SideSeen {
  /** [m] */
  readonly span: number;
  readonly rise: number;
  /** The ground, as distances from anchor A and heights [m]. */
  readonly points: readonly (readonly [number, number])[];
}

/** Places of metres in the drawing [px]. */
export interface SideFrame {
  readonly width: number;
  readonly height: number;
  readonly px: (distance: number) => number;
  readonly py: (height: number) => number;
}

export function plainSide({ span, rise, points }: SideSeen, { width, height, px, py }: SideFrame): readonly Shape[] {
  const lowest = Math.min(0, ...points.map(([, z]) => z));
  const middle = { textAnchor: "middle" } as const;
  return [
    ...rock(points, { width, height, px, py }),
    path(`M${px(0)} ${py(0)}L${px(span)} ${py(rise)}`, { styled: "line" }),
    circle(px(0), py(0), 4, { styled: "anchor" }),
    circle(px(span), py(rise), 4, { styled: "anchor" }),
    group(
      [
        text("A", px(0), py(0) - 12, middle),
        text("B", px(span), py(rise) - 12, middle),
        text(quantity.length(span), (px(0) + px(span)) / 2, (py(0) + py(rise)) / 2 - 15, middle),
        text(quantity.along(lowest), width - 4, Math.min(py(lowest) + 16, height - 4), { textAnchor: "end" }),
      ],
      { styled: "measures" },
    ),
  ];
}

/** The ground from edge to edge of the drawing, and down out of it. */
function rock(points: SideSeen["points"], { width, height, px, py }: SideFrame): readonly Shape[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return [];
  const surface = points.map(([x, z]) => `${px(x)} ${py(z)}`);
  const top = [`0 ${py(first[1])}`, ...surface, `${width} ${py(last[1])}`].join("L");
  return [
    path(`M-4 ${height + 4}L-4 ${py(first[1])}L${top}L${width + 4} ${py(last[1])}V${height + 4}Z`, { styled: "rock" }),
  ];
}
