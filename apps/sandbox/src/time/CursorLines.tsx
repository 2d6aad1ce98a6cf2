import { type PlotFrame, type Probe, secondsDecimals, type TimeRange, xOf, yOf } from "@secondline/figures/time";
import { quantity } from "@secondline/words";
import type { PlaybackClock } from "@secondline/workbench";
import { useEffect, useRef } from "react";
import styles from "./Plot.module.css";

interface Props {
  readonly clock: PlaybackClock;
  readonly range: TimeRange;
  readonly frame: PlotFrame;
  /** Upper end of the value axis. */
  readonly top: number;
  readonly probes: readonly Probe[];
  readonly measure: number | null;
}

/** Distance kept between the middle of the cursor's time and the plot's right edge [px]. */
const FLAG_BEFORE_END = 20;

/** The cursor shared with the scene, and the second one that is measured from. Moved by transforms, never rendered. */
export function CursorLines({ clock, range, frame, top, probes, measure }: Props) {
  const line = useRef<HTMLDivElement>(null);
  const flag = useRef<HTMLSpanElement>(null);
  const dots = useRef(new Map<string, HTMLElement>());
  const span = useRef<HTMLDivElement>(null);

  useEffect(() => {
    const digits = Math.max(secondsDecimals(range.to - range.from), 3);
    const place = () => {
      const { time } = clock.getSnapshot();
      const x = xOf(time, range, frame);
      const visible = x >= -0.5 && x <= frame.width + 0.5;
      moveTo(line.current, x, 0, visible);
      // At the end of the run it would cover the names beside the plot.
      moveTo(flag.current, Math.min(x, frame.width - FLAG_BEFORE_END), 0, visible);
      if (flag.current) {
        flag.current.textContent = quantity.seconds(time, digits);
      }
      for (const probe of probes) {
        const value = visible ? probe.valueAt(time) : null;
        moveTo(dots.current.get(probe.key), x, value === null ? 0 : yOf(value, top, frame), value !== null);
      }
      if (measure !== null) stretch(span.current, xOf(measure, range, frame), x, frame.width);
    };
    place();
    return clock.subscribe(place);
  }, [clock, range, frame, top, probes, measure]);

  const measureX = measure === null ? -1 : xOf(measure, range, frame);
  const box = { left: frame.left, top: frame.top, width: frame.width, height: frame.height };
  return (
    <>
      <div
        className={styles.axisCursor}
        style={{ ...box, top: box.top + box.height, height: frame.axisHeight }}
        aria-hidden="true"
      >
        <span ref={flag} className={styles.cursorTime} />
      </div>
      <div className={styles.cursors} style={box} aria-hidden="true">
        {measure !== null && <div ref={span} className={styles.measured} />}
        {measureX >= 0 && measureX <= frame.width && (
          <div className={styles.secondCursor} style={{ transform: `translateX(${measureX}px)` }} />
        )}
        <div ref={line} className={styles.cursor} data-cursor />
        {probes.map((probe) => (
          <i
            key={probe.key}
            ref={(element) => {
              if (element) dots.current.set(probe.key, element);
              else dots.current.delete(probe.key);
            }}
            className={styles.dot}
            style={{ color: probe.colour }}
          />
        ))}
      </div>
    </>
  );
}

function moveTo(element: HTMLElement | null | undefined, x: number, y: number, visible: boolean): void {
  if (!element) return;
  element.style.visibility = visible ? "visible" : "hidden";
  if (visible) element.style.transform = `translate(${x}px, ${y}px)`;
}

/** The stretch between the two cursors, cut off at the edges of the plot. */
function stretch(element: HTMLElement | null, a: number, b: number, width: number): void {
  if (!element) return;
  const left = Math.max(Math.min(a, b), 0);
  const right = Math.min(Math.max(a, b), width);
  element.style.transform = `translateX(${left}px) scaleX(${Math.max(right - left, 0)})`;
}
