import { groundHeight, type Rig } from "@secondline/rig";
import { sayPage } from "@secondline/words/page/page";
import { quantity } from "../words.ts";
import styles from "./RigSketch.module.css";

interface Props {
  rig: Rig;
  /** Path of the field being edited: its part is drawn in the accent colour. */
  editing: string | undefined;
}

const WIDTH = 320;
const HEIGHT = 132;
const EDGE_WIDTH = 26;

/** A plan-like drawing of the rig from the side, not to scale in height, that marks the part being edited. */
export function RigSketch({ rig, editing }: Props) {
  const x = (metres: number) => EDGE_WIDTH + (metres / rig.span) * (WIDTH - 2 * EDGE_WIDTH);
  const top = 40;
  const mark = (...groups: string[]) =>
    editing !== undefined && groups.some((group) => editing.startsWith(group)) ? styles.marked : "";
  const middle = x(rig.span / 2);
  return (
    <svg
      className={styles.sketch}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={sayPage("rigSketch.rigSpan", { name: rig.name, length: quantity.length(rig.span) })}
    >
      <path className={`${styles.ground} ${mark("ground")}`} d={groundPath(rig, x, top)} />
      <path
        className={`${styles.line} ${mark("main")}`}
        d={`M${x(0)} ${top} Q${middle} ${top + 12} ${x(rig.span)} ${top}`}
      />
      {rig.backup && (
        <path
          className={`${styles.backup} ${mark("backup.s", "backup.l", "backup.end")}`}
          d={`M${x(0)} ${top + 2} Q${middle} ${top + 16 + Math.min(40, rig.backup.slack * 300)} ${x(rig.span)} ${top + 2}`}
        />
      )}
      {rig.backup?.connections.map((part) => (
        <line
          key={`${part.kind}${part.at}`}
          className={`${part.kind === "tape" ? styles.tape : styles.connection} ${mark(`backup.${part.kind}s`)}`}
          x1={x(part.at * rig.span)}
          x2={x(part.at * rig.span)}
          y1={top + 3}
          y2={top + 3 + 20 * 4 * part.at * (1 - part.at)}
        />
      ))}
      <g className={`${styles.walker} ${mark("leash", "rings", "walker", "harness")}`}>
        <circle cx={middle} cy={top + 6} r="3" />
        <path d={`M${middle} ${top + 9}V${top + 24}`} />
        <path d={`M${middle} ${top + 24}v12m-5 9 5-9 5 9M${middle - 6} ${top + 32}l6-4 6 4`} />
        <circle cx={middle} cy={top + 20} r="3.4" />
      </g>
      <circle className={`${styles.anchor} ${mark("anchorA")}`} cx={x(0)} cy={top} r="4" />
      <circle className={`${styles.anchor} ${mark("anchorB")}`} cx={x(rig.span)} cy={top} r="4" />
      <text className={styles.letter} x={x(0) - 14} y={top + 4}>
        A
      </text>
      <text className={styles.letter} x={x(rig.span) + 14} y={top + 4}>
        B
      </text>
      <g className={`${styles.measure} ${mark("span", "rise")}`}>
        <path d={`M${x(0)} 18H${x(rig.span)}M${x(0)} 13v10M${x(rig.span)} 13v10`} />
        <text x={middle} y="14">
          {quantity.length(rig.span)}
        </text>
      </g>
    </svg>
  );
}

/** The ground's shape, its height fitted into the drawing. */
function groundPath(rig: Rig, x: (metres: number) => number, top: number): string {
  const places = Array.from({ length: 41 }, (_, i) => (i / 40) * rig.span);
  const heights = places.map((place) => groundHeight(rig, place));
  const lowest = Math.min(...heights, -1);
  const y = (height: number) => top + 4 + (Math.min(0, height) / lowest) * (HEIGHT - top - 14);
  const points = places.map((place, i) => `${x(place).toFixed(1)} ${y(heights[i]!).toFixed(1)}`);
  return `M0 ${top + 6}L${points.join("L")}L${WIDTH} ${top + 6}V${HEIGHT}H0Z`;
}
