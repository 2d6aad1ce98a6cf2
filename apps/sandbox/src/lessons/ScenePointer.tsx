import { fitRange, plotFrame, timeOf, xOf } from "@secondline/figures/time";
import type { PlaybackClock } from "@secondline/workbench";
import { say } from "@secondline/workbench/lessons";
import { useRef } from "react";
import { useClock } from "../clock/useClock.ts";
import { lettering } from "../design/lettering.ts";
import { useFrameSize } from "../time/useFrameSize.ts";
import { CLASS_GUTTER } from "./ClassTraces.tsx";
import styles from "./classroom.module.css";

/** The line follows the clock this often [ms]. */
const FOLLOW_INTERVAL_MS = 30;

/**
 * Lies over the picture in a class: the time of the run goes from left to right as it does in the traces below, and one line stands at the
 * moment in both. Dragging it moves the fall, and the line in the traces; the traces move it here. `tracedTime`: how
 * long the traces are, which may be longer than the run in the picture [s].
 */
export function ScenePointer({ clock, tracedTime }: { clock: PlaybackClock; tracedTime: number }) {
  const { ref, size } = useFrameSize<HTMLDivElement>();
  const pressed = useRef(false);
  const duration = useClock(clock, (state) => state.duration);
  const time = useClock(clock, (state) => state.time, FOLLOW_INTERVAL_MS);
  const range = fitRange(tracedTime);
  const frame = plotFrame({
    width: Math.max(size.width, 1),
    height: Math.max(size.height, 1),
    compact: false,
    gutter: CLASS_GUTTER,
    lettering: lettering(),
  });
  function point(event: React.PointerEvent<HTMLDivElement>): void {
    const left = event.currentTarget.getBoundingClientRect().left + frame.left;
    clock.pause();
    clock.seek(Math.min(duration, Math.max(0, timeOf(event.clientX - left, range, frame))));
  }
  return (
    <div
      ref={ref}
      className={styles.pointer}
      data-pointer
      // The slider of the playback says and sets the same for those who hear the page.
      aria-hidden="true"
      title={say("class.pointer")}
      onPointerDown={(event) => {
        pressed.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        point(event);
      }}
      onPointerMove={(event) => pressed.current && point(event)}
      onPointerUp={() => {
        pressed.current = false;
      }}
      onPointerCancel={() => {
        pressed.current = false;
      }}
    >
      {duration > 0 && (
        <div className={styles.line} style={{ transform: `translateX(${frame.left + xOf(time, range, frame)}px)` }} />
      )}
    </div>
  );
}
