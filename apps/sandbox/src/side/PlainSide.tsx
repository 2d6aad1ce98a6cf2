import { quantity } from "@secondline/words";
import type { Projection, Side } from "@secondline/workbench";
import styles from "./side.module.css";

/** A rig from the side as its document has it: rock, anchors, the straight line between them, heights at the rim. */
export function PlainSide({ side: { site, points }, projection }: { side: Side; projection: Projection }) {
  const { width, height, px, py } = projection;
  const surface = points.map(([x, z]) => `${px(x)} ${py(z)}`);
  const [first, last] = [points[0], points.at(-1)];
  const ends = first && last ? [`0 ${py(first[1])}`, ...surface, `${width} ${py(last[1])}`] : [];
  const lowest = Math.min(0, ...points.map(([, z]) => z));
  return (
    <svg width={width} height={height} aria-hidden="true">
      {ends.length > 0 && (
        <path
          className={styles.rock}
          d={`M-4 ${height + 4}L-4 ${py(first![1])}L${ends.join("L")}L${width + 4} ${py(last![1])}V${height + 4}Z`}
        />
      )}
      <path className={styles.line} d={`M${px(0)} ${py(0)}L${px(site.span)} ${py(site.rise)}`} />
      <circle className={styles.anchor} cx={px(0)} cy={py(0)} r="4" />
      <circle className={styles.anchor} cx={px(site.span)} cy={py(site.rise)} r="4" />
      <g className={styles.measures}>
        <text x={px(0)} y={py(0) - 12} textAnchor="middle">
          A
        </text>
        <text x={px(site.span)} y={py(site.rise) - 12} textAnchor="middle">
          B
        </text>
        <text x={(px(0) + px(site.span)) / 2} y={(py(0) + py(site.rise)) / 2 - 15} textAnchor="middle">
          {quantity.length(site.span)}
        </text>
        <text x={width - 4} y={Math.min(py(lowest) + 16, height - 4)} textAnchor="end">
          {quantity.along(lowest)}
        </text>
      </g>
    </svg>
  );
}
