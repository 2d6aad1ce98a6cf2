import { useEffect, useRef, useState } from "react";
import type { PlaybackClock } from "../clock/playbackClock.ts";
import { type PlotFrame, timeOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import styles from "./TimeStrip.module.css";
import { fitRange, panned, zoomed } from "./visibleRange.ts";

interface Props {
  readonly clock: PlaybackClock;
  readonly duration: number;
  readonly range: TimeRange;
  readonly frame: PlotFrame;
  readonly onRange: (range: TimeRange) => void;
  readonly onMeasure: (time: number) => void;
  /** How far the surface reaches above the plot area, to where events are named [px]. */
  readonly above: number;
  /** The time that a press at this place of the plot area means exactly, such as a peak's [s]; null: none. */
  readonly snap: (x: number, y: number) => number | null;
  /** The cursor's time and the values there, in words. */
  readonly describe: (time: number) => string;
}

/** The plot area as a thing to scrub: press or drag, pinch, wheel, and as a slider for keys and screen readers. */
export function ScrubSurface(props: Props) {
  const { clock, duration, frame, above } = props;
  const surface = useRef<HTMLDivElement>(null);
  const latest = useRef(props);
  latest.current = props;
  useEffect(() => listenToPointers(surface.current!, () => latest.current), []);
  const { time, words } = useSettledTime(clock, props.describe);
  return (
    <div
      ref={surface}
      className={styles.surface}
      style={{ left: frame.left, top: frame.top - above, width: frame.width, height: frame.height + above }}
      role="slider"
      tabIndex={0}
      aria-label="Time in the run"
      aria-valuemin={0}
      aria-valuemax={duration}
      aria-valuenow={Math.min(time, duration)}
      aria-valuetext={words}
    />
  );
}

/** A time is told when it has stood still for so long, so that a screen reader is not flooded [ms]. */
const SETTLED = 250;

function useSettledTime(clock: PlaybackClock, describe: (time: number) => string): { time: number; words: string } {
  const [time, setTime] = useState(() => clock.getSnapshot().time);
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const unsubscribe = clock.subscribe(() => {
      clearTimeout(timer);
      timer = setTimeout(() => setTime(clock.getSnapshot().time), SETTLED);
    });
    return () => {
      clearTimeout(timer);
      unsubscribe();
    };
  }, [clock]);
  return { time, words: describe(time) };
}

/** Moves less than this are a press, not a drag [px]. */
const PRESS = 4;

function listenToPointers(surface: HTMLDivElement, props: () => Props): () => void {
  const pointers = new Map<number, { x: number; y: number }>();
  let start: { x: number; time: number; measured: boolean } | null = null;
  let wasPlaying = false;
  const place = (event: PointerEvent | WheelEvent | MouseEvent) => {
    const box = surface.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top - props().above };
  };
  const seekTo = (x: number) => props().clock.seek(timeOf(x, props().range, props().frame));

  function down(event: PointerEvent): void {
    if (event.button !== 0) return;
    const at = place(event);
    surface.setPointerCapture(event.pointerId);
    surface.focus({ preventScroll: true });
    pointers.set(event.pointerId, at);
    if (pointers.size > 1) {
      // The first finger was the beginning of a pinch and did not mean to move the cursor.
      if (start) props().clock.seek(start.time);
      start = null;
      return;
    }
    const { playing, time } = props().clock.getSnapshot();
    wasPlaying = playing;
    props().clock.pause();
    start = { x: at.x, time, measured: event.shiftKey };
    if (event.shiftKey) props().onMeasure(clampedTime(at.x, props()));
    seekTo(at.x);
  }

  function move(event: PointerEvent): void {
    const before = pointers.get(event.pointerId);
    if (!before) return;
    const at = place(event);
    if (pointers.size === 1 && start) seekTo(at.x);
    else if (pointers.size === 2) pinch(event.pointerId, before, at);
    pointers.set(event.pointerId, at);
  }

  function pinch(moving: number, before: { x: number }, at: { x: number }): void {
    const other = [...pointers].find(([id]) => id !== moving)?.[1];
    if (!other) return;
    const { range, frame, duration, onRange } = props();
    const factor = Math.max(Math.abs(at.x - other.x), 20) / Math.max(Math.abs(before.x - other.x), 20);
    const middle = timeOf((before.x + other.x) / 2, range, frame);
    const shift = ((before.x - at.x) / 2 / frame.width) * (range.to - range.from);
    onRange(panned(zoomed(range, factor, middle, duration), shift, duration));
  }

  function up(event: PointerEvent): void {
    if (!pointers.delete(event.pointerId)) return;
    const at = place(event);
    const pressed = start !== null && !start.measured && Math.abs(at.x - start.x) < PRESS;
    const exact = pressed ? props().snap(at.x, at.y) : null;
    if (exact !== null) props().clock.seek(exact);
    else if (start && wasPlaying && event.type === "pointerup") props().clock.play();
    if (pointers.size === 0) start = null;
  }

  function wheel(event: WheelEvent): void {
    const { range, frame, duration, onRange } = props();
    const sideways = event.shiftKey ? event.deltaY || event.deltaX : event.deltaX;
    if (event.ctrlKey || event.metaKey) {
      event.preventDefault();
      onRange(zoomed(range, Math.exp(-event.deltaY / 300), timeOf(place(event).x, range, frame), duration));
    } else if (sideways !== 0 && Math.abs(sideways) >= Math.abs(event.shiftKey ? 0 : event.deltaY)) {
      event.preventDefault();
      onRange(panned(range, (sideways / frame.width) * (range.to - range.from), duration));
    }
  }

  const fit = () => props().onRange(fitRange(props().duration));
  surface.addEventListener("pointerdown", down);
  surface.addEventListener("pointermove", move);
  surface.addEventListener("pointerup", up);
  surface.addEventListener("pointercancel", up);
  surface.addEventListener("wheel", wheel, { passive: false });
  surface.addEventListener("dblclick", fit);
  return () => {
    surface.removeEventListener("pointerdown", down);
    surface.removeEventListener("pointermove", move);
    surface.removeEventListener("pointerup", up);
    surface.removeEventListener("pointercancel", up);
    surface.removeEventListener("wheel", wheel);
    surface.removeEventListener("dblclick", fit);
  };
}

function clampedTime(x: number, { range, frame, duration }: Props): number {
  return Math.min(Math.max(timeOf(x, range, frame), 0), duration);
}
