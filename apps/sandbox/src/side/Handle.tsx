import { newRigWords } from "@secondline/words/newRig";
import { HANDLE_REACH, type Held, heldWords, KEY_STEP, keyMove, rangeOf } from "@secondline/workbench";
import type { KeyboardEvent } from "react";
import styles from "./side.module.css";
import type { SideInHand } from "./useSideDesk.ts";

const { say } = newRigWords;
/** Steps of a key with Shift, or of Page up and down. */
const BIG_MOVE_STEPS = 10;

interface Props {
  held: Held;
  /** [px] */
  at: readonly [x: number, y: number];
  desk: SideInHand;
  data: string;
  /** It has the keyboard, or has lost it. */
  onFocused: (focused: boolean) => void;
}

/** One thing to take hold of: a point of the ground in two directions, a connection along the span. */
export function Handle({ held, at: [x, y], desk, data, onFocused }: Props) {
  const isGround = held.kind === "ground";
  const name = say(`side.${held.kind}`, { number: held.index + 1 });
  const place = heldWords(desk.shown, held);
  const { now, min, max } = rangeOf(desk.shown, held);
  function onKeyDown(event: KeyboardEvent): void {
    const by = keyStep(event, isGround);
    if (by) desk.nudge(held, by[0] * KEY_STEP, by[1] * KEY_STEP);
    else if (isGround && (event.key === "Delete" || event.key === "Backspace")) desk.remove(held.index);
    else if (event.key !== "Escape" || !desk.takeBack(held)) return;
    event.preventDefault();
    event.stopPropagation();
  }
  return (
    <g
      className={styles.handle}
      data-grip=""
      data-handle={data}
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={now}
      aria-valuetext={place}
      aria-orientation={isGround ? "vertical" : "horizontal"}
      onKeyDown={onKeyDown}
      onFocus={() => {
        desk.choose(held);
        onFocused(true);
      }}
      onBlur={() => {
        desk.leave();
        onFocused(false);
      }}
    >
      <circle className={styles.touch} cx={x} cy={y} r={HANDLE_REACH} />
      {isGround ? (
        <circle className={styles.dot} data-over-labels="" cx={x} cy={y} r="6" />
      ) : (
        <rect
          className={styles.dot}
          data-over-labels=""
          x={x - 5.5}
          y={y - 5.5}
          width="11"
          height="11"
          transform={`rotate(45 ${x} ${y})`}
        />
      )}
      <circle className={styles.focus} cx={x} cy={y} r="11" />
    </g>
  );
}

/** Steps to the right and upwards. A connection goes along the span with either pair of arrows, as a slider does. */
function keyStep(event: KeyboardEvent, isGround: boolean): readonly [number, number] | undefined {
  const move = keyMove(event);
  if (!move) return undefined;
  const by = move.isLarge ? BIG_MOVE_STEPS : 1;
  return isGround ? [move.across * by, move.up * by] : [(move.across + move.up) * by, 0];
}
