/** Fingers and mouse on a plot over time: one scrubs, two zoom and pan. Knows no page: places are those in the plot area [px]. */
import { type DrawnRange, type PlotFrame, pinched, type TimeRange, timeOf, wheeled } from "@secondline/figures/time";
import type { PlaybackClock } from "./playbackClock.ts";

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

export class Scrubbing {
  readonly #target: () => ScrubTarget;
  readonly #pointers = new Map<number, Place>();
  /** Where and when the first pointer came down; null while pinching, and with no pointer down. */
  #start: { readonly x: number; readonly time: number; readonly measures: boolean; readonly played: boolean } | null =
    null;

  constructor(target: () => ScrubTarget) {
    this.#target = target;
  }

  /** `measures`: a drag from here measures. */
  down(pointer: number, at: Place, measures: boolean): void {
    this.#pointers.set(pointer, at);
    const { clock, onMeasure } = this.#target();
    if (this.#pointers.size > 1) {
      // The first finger was the beginning of a pinch and did not mean to move the cursor.
      if (this.#start) clock.seek(this.#start.time);
      this.#start = null;
      return;
    }
    const { playing, time } = clock.getSnapshot();
    this.#start = { x: at.x, time, measures, played: playing };
    clock.pause();
    clock.seek(this.#timeAt(at));
    if (measures) onMeasure(clock.getSnapshot().time);
  }

  move(pointer: number, at: Place): void {
    const before = this.#pointers.get(pointer);
    if (!before) return;
    if (this.#start) this.#target().clock.seek(this.#timeAt(at));
    else if (this.#pointers.size === 2) this.#pinch(pointer, before, at);
    this.#pointers.set(pointer, at);
  }

  /** `isLifted`: by the hand; a pointer that is taken away means nothing. */
  up(pointer: number, at: Place, isLifted: boolean): void {
    if (!this.#pointers.delete(pointer)) return;
    const start = this.#start;
    if (this.#pointers.size === 0) this.#start = null;
    if (!start || !isLifted) return;
    const { clock, snap } = this.#target();
    const pressed = !start.measures && Math.abs(at.x - start.x) < PRESS_DISTANCE;
    const exact = pressed ? snap(at.x, at.y) : null;
    if (exact !== null) clock.seek(exact);
    else if (start.played) clock.play();
  }

  /** False where a plain turn scrolls the page. */
  wheel(turn: Parameters<typeof wheeled>[0], at: Place): boolean {
    const next = wheeled(turn, at.x, this.#drawn());
    if (next) this.#target().onRange(next);
    return next !== undefined;
  }

  #pinch(moving: number, before: Place, at: Place): void {
    const other = [...this.#pointers].find(([id]) => id !== moving)?.[1];
    if (other) this.#target().onRange(pinched(before.x, at.x, other.x, this.#drawn()));
  }

  #drawn(): DrawnRange {
    const { range, frame, duration } = this.#target();
    return { range, width: frame.width, whole: duration };
  }

  #timeAt({ x }: Place): number {
    const { range, frame } = this.#target();
    return timeOf(x, range, frame);
  }
}
