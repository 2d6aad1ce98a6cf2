import { keyMove } from "@secondline/workbench";
import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";
import styles from "./figures.module.css";

interface Props {
  label: string;
  /** Where it stands, in words. */
  text: string;
  value: number;
  min: number;
  max: number;
  /** A press of an arrow key, and of one with Shift or of Page up and down. */
  step: number;
  bigStep: number;
  /** Pixels per unit of `value`. */
  perUnit: number;
  onBegin?: (() => void) | undefined;
  /** How far since it was taken hold of. */
  onBy: (by: number) => void;
  onEnd?: ((by: number) => void) | undefined;
  children: ReactNode;
  className?: string;
  data?: string;
  handle?: string;
}

/** Something in a drawing that can be moved along its axis: by mouse, finger or arrow keys. */
export function Grip(props: Props) {
  const { label, text, value, min, max, step, bigStep, perUnit, onBegin, onBy, onEnd, children, className, data } =
    props;
  const held = useRef<{ readonly x: number; by: number }>(undefined);
  const onKeyDown = (event: KeyboardEvent) => {
    const by = keyStep(event, step, bigStep, value, min, max);
    if (by === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    onBegin?.();
    onBy(by);
    onEnd?.(by);
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = { x: event.clientX, by: 0 };
    onBegin?.();
  };
  const onPointerMove = (event: PointerEvent) => {
    if (!held.current) return;
    held.current.by = (event.clientX - held.current.x) / perUnit;
    onBy(held.current.by);
  };
  const onPointerUp = () => {
    if (!held.current) return;
    const { by } = held.current;
    held.current = undefined;
    onEnd?.(by);
  };
  return (
    <g
      className={`${styles.grip} ${className ?? ""}`}
      data-grip={data}
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={Math.min(Math.max(value, min), max)}
      aria-valuetext={text}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={onPointerUp}
    >
      <title>{`${label}: ${text}`}</title>
      {children}
    </g>
  );
}

function keyStep(
  event: KeyboardEvent,
  step: number,
  big: number,
  value: number,
  min: number,
  max: number,
): number | undefined {
  if (event.key === "Home") return min - value;
  if (event.key === "End") return max - value;
  const move = keyMove(event);
  return move && (move.across + move.up) * (move.isLarge ? big : step);
}
