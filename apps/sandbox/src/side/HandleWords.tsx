import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import { type Held, heldWords, type Projection } from "@secondline/workbench";
import styles from "./side.module.css";
import type { SideInHand } from "./useSideDesk.ts";

interface Props {
  held: Held;
  /** [px] */
  at: readonly [x: number, y: number];
  desk: SideInHand;
  projection: Projection;
}

/** Where a handle stands, or why it cannot stand there: beside it and within the drawing. */
export function HandleWords({ held, at: [x, y], desk, projection }: Props) {
  const fault = desk.isHeld && held.kind === "ground" ? desk.fault : undefined;
  const text = fault
    ? newRigWords.say("side.tooHigh", { limit: quantity.along(fault.limit) })
    : heldWords(desk.shown, held);
  const half = text.length * 3.4 + 8;
  const middle = Math.min(Math.max(x, half + 2), Math.max(projection.width - half - 2, half + 2));
  const top = y > 42 ? Math.min(y, projection.height) - 40 : Math.max(y, -18) + 20;
  return (
    <g className={fault ? `${styles.words} ${styles.tooHigh}` : styles.words}>
      <rect x={middle - half} y={top} width={2 * half} height="22" rx="4" />
      <text x={middle} y={top + 15.5}>
        {text}
      </text>
    </g>
  );
}
