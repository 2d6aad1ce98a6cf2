import { quantity } from "@secondline/words";
import { newRigWords } from "@secondline/words/newRig";
import { type Held, heldWords, type Projection, wordsBeside } from "@secondline/workbench";
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
export function HandleWords({ held, at, desk, projection }: Props) {
  const fault = desk.isHeld && held.kind === "ground" ? desk.fault : undefined;
  const text = fault
    ? newRigWords.say("side.tooHigh", { limit: quantity.along(fault.limit) })
    : heldWords(desk.shown, held);
  const { left, width, middle, top } = wordsBeside(text, at, projection);
  return (
    <g className={fault ? `${styles.words} ${styles.tooHigh}` : styles.words}>
      <rect x={left} y={top} width={width} height="22" rx="4" />
      <text x={middle} y={top + 15.5}>
        {text}
      </text>
    </g>
  );
}
