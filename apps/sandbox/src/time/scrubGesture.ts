import {
  type Drawn,
  fitRange,
  type PlotFrame,
  pinched,
  type TimeRange,
  timeOf,
  wheeled,
} from "@secondline/figures/time";
import type { PlaybackClock } from "@secondline/workbench";

/** What a gesture on the plot can reach; asked anew at every event. */
export interface ScrubTarget {
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
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** Moves less than this are a press, not a drag [px]. */
const PRESS_DISTANCE = 4;

/**
 * One pointer scrubs and a press goes to what it means; two zoom and pan; Ctrl and the wheel zoom, Shift and the wheel or a
 * sideways wheel pan; Shift and a drag measure; a double press shows the whole run. Returns what ends the listening.
 */
export function listenForScrubbing(surface: HTMLElement, target: () => ScrubTarget): () => void {
  const gesture = new ScrubGesture(surface, target);
  const ending = new AbortController();
  const { signal } = ending;
  surface.addEventListener("pointerdown", (event) => gesture.down(event), { signal });
  surface.addEventListener("pointermove", (event) => gesture.move(event), { signal });
  surface.addEventListener("pointerup", (event) => gesture.up(event), { signal });
  surface.addEventListener("pointercancel", (event) => gesture.up(event), { signal });
  surface.addEventListener("wheel", (event) => gesture.wheel(event), { signal, passive: false });
  surface.addEventListener("dblclick", () => target().onRange(fitRange(target().duration)), { signal });
  return () => ending.abort();
}

class ScrubGesture {
  readonly #surface: HTMLElement;
  readonly #target: () => ScrubTarget;
  readonly #pointers = new Map<number, Place>();
  /** Where and when the first pointer came down; null while pinching, and with no pointer down. */
  #start: { readonly x: number; readonly time: number; readonly measures: boolean; readonly played: boolean } | null =
    null;

  constructor(surface: HTMLElement, target: () => ScrubTarget) {
    this.#surface = surface;
    this.#target = target;
  }

  down(event: PointerEvent): void {
    if (event.button !== 0) return;
    const at = this.#place(event);
    this.#surface.setPointerCapture(event.pointerId);
    this.#surface.focus({ preventScroll: true });
    this.#pointers.set(event.pointerId, at);
    const { clock, onMeasure } = this.#target();
    if (this.#pointers.size > 1) {
      // The first finger was the beginning of a pinch and did not mean to move the cursor.
      if (this.#start) clock.seek(this.#start.time);
      this.#start = null;
      return;
    }
    const { playing, time } = clock.getSnapshot();
    this.#start = { x: at.x, time, measures: event.shiftKey, played: playing };
    clock.pause();
    clock.seek(this.#timeAt(at));
    if (event.shiftKey) onMeasure(clock.getSnapshot().time);
  }

  move(event: PointerEvent): void {
    const before = this.#pointers.get(event.pointerId);
    if (!before) return;
    const at = this.#place(event);
    if (this.#start) this.#target().clock.seek(this.#timeAt(at));
    else if (this.#pointers.size === 2) this.#pinch(event.pointerId, before, at);
    this.#pointers.set(event.pointerId, at);
  }

  up(event: PointerEvent): void {
    if (!this.#pointers.delete(event.pointerId)) return;
    const start = this.#start;
    if (this.#pointers.size === 0) this.#start = null;
    if (!start || event.type !== "pointerup") return;
    const at = this.#place(event);
    const { clock, snap } = this.#target();
    const pressed = !start.measures && Math.abs(at.x - start.x) < PRESS_DISTANCE;
    const exact = pressed ? snap(at.x, at.y) : null;
    if (exact !== null) clock.seek(exact);
    else if (start.played) clock.play();
  }

  wheel(event: WheelEvent): void {
    const next = wheeled(event, this.#place(event).x, this.#drawn());
    if (!next) return;
    event.preventDefault();
    this.#target().onRange(next);
  }

  #pinch(moving: number, before: Place, at: Place): void {
    const other = [...this.#pointers].find(([id]) => id !== moving)?.[1];
    if (!other) return;
    this.#target().onRange(pinched(before.x, at.x, other.x, this.#drawn()));
  }

  #drawn(): Drawn {
    const { range, frame, duration } = this.#target();
    return { range, width: frame.width, whole: duration };
  }

  #timeAt({ x }: Place): number {
    const { range, frame } = this.#target();
    return timeOf(x, range, frame);
  }

  #place(event: MouseEvent): Place {
    const box = this.#surface.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top - this.#target().above };
  }
}
