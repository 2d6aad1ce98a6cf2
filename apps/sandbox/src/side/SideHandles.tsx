import { newRigWords } from "@secondline/words/newRig";
import { type Held, handleAt, handleName, handlesOf, nearestHandle, type Projection } from "@secondline/workbench";
import { type KeyboardEvent, type MouseEvent, type PointerEvent, useEffect, useRef, useState } from "react";
import { Handle } from "./Handle.tsx";
import { HandleWords } from "./HandleWords.tsx";
import styles from "./side.module.css";
import type { SideInHand } from "./useSideDesk.ts";

interface Props {
  desk: SideInHand;
  projection: Projection;
  grips: readonly Held["kind"][];
}

/** Handles on the ground and the connections of a drawing from the side; a pointer takes the nearest one. */
export function SideHandles({ desk, projection, grips }: Props) {
  const { shown, drag } = desk;
  const { width, height, px, py, x, z } = projection;
  const drawing = useRef<SVGSVGElement>(null);
  useEffect(() => keepTouches(drawing.current!), []);
  const held = useRef<{ readonly held: Held; readonly dx: number; readonly dy: number }>(undefined);
  const [focused, setFocused] = useState(false);
  const handles = handlesOf(shown, grips);
  const chosen = handles.find((one) => one.kind === desk.chosen?.kind && one.index === desk.chosen.index);
  const at = (one: Held) => handleAt(shown, one, projection);
  const nearest = (event: MouseEvent<SVGSVGElement>) => nearestHandle(shown, handles, projection, inDrawing(event));
  function onPointerDown(event: PointerEvent<SVGSVGElement>): void {
    const found = event.button === 0 && event.isPrimary ? nearest(event) : undefined;
    if (!found) return;
    event.preventDefault();
    event.currentTarget.setPointerCapture(event.pointerId);
    held.current = found;
    desk.choose(found.held);
    const name = handleName(found.held);
    event.currentTarget.querySelector<SVGElement>(`[data-handle="${name}"]`)?.focus({ preventScroll: true });
  }
  function onPointerMove(event: PointerEvent<SVGSVGElement>): void {
    if (!held.current) return;
    const [mx, my] = inDrawing(event);
    drag(held.current.held, x(mx + held.current.dx), z(my + held.current.dy), projection);
  }
  function letGo(take: boolean): void {
    if (!held.current) return;
    held.current = undefined;
    if (take) desk.drop();
    else desk.cancel();
  }
  function onKeyDown(event: KeyboardEvent<SVGSVGElement>): void {
    if (event.key !== "Escape" || !held.current) return;
    event.preventDefault();
    event.stopPropagation();
    letGo(false);
  }
  function onDoubleClick(event: MouseEvent<SVGSVGElement>): void {
    if (grips.includes("ground") && !nearest(event)) desk.add(x(inDrawing(event)[0]));
  }
  const line = shown.points.map(([distance, level]) => `${px(distance)} ${py(level)}`).join("L");
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of handles in a drawing
    <svg
      ref={drawing}
      className={styles.handles}
      width={width}
      height={height}
      data-held={desk.isHeld || undefined}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={() => letGo(true)}
      onPointerCancel={() => letGo(false)}
      onKeyDownCapture={onKeyDown}
      onDoubleClick={onDoubleClick}
      aria-label={newRigWords.say("side.name")}
      role="group"
    >
      {grips.includes("ground") && line !== "" && (
        <path className={`${styles.ground} ${desk.fault ? styles.wrong : ""}`} d={`M${line}`} />
      )}
      {handles.map((one) => (
        <Handle
          key={handleName(one)}
          held={one}
          at={at(one)}
          desk={desk}
          data={handleName(one)}
          onFocused={setFocused}
        />
      ))}
      {chosen && (focused || desk.isHeld) && (
        <HandleWords held={chosen} at={at(chosen)} desk={desk} projection={projection} />
      )}
    </svg>
  );
}

/** A finger on a handle moves that, and scrolls nothing: inside of a drawing no style can say so. */
function keepTouches(drawing: SVGSVGElement): () => void {
  const keep = (event: TouchEvent) => {
    if (event.target instanceof Element && event.target.closest("[data-grip]")) event.preventDefault();
  };
  drawing.addEventListener("touchstart", keep, { passive: false });
  return () => drawing.removeEventListener("touchstart", keep);
}

function inDrawing(event: MouseEvent<SVGSVGElement>): readonly [number, number] {
  const box = event.currentTarget.getBoundingClientRect();
  return [event.clientX - box.left, event.clientY - box.top];
}
