/** Changes of a visible range by a turn of the wheel and by two fingers, whatever the axis shows. */
import type { TimeRange } from "./plotGrid.ts";
import { panned, zoomed } from "./visibleRange.ts";

/** Fingers nearer to one another than this do not zoom further [px]. */
const LEAST_FINGER_DISTANCE = 20;

/** A range that is drawn over `width` pixels, of a whole that ends at `whole`. */
export interface DrawnRange {
  readonly range: TimeRange;
  readonly width: number;
  readonly whole: number;
}

interface Wheel {
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly deltaX: number;
  readonly deltaY: number;
}

const valueAt = (x: number, { range, width }: DrawnRange): number => range.from + (x / width) * (range.to - range.from);

/** With Ctrl the wheel zooms about `x` [px]; with Shift, or sideways, it pans. Undefined: a plain turn scrolls the page. */
export function wheeled(wheel: Wheel, x: number, drawn: DrawnRange): TimeRange | undefined {
  const { range, width, whole } = drawn;
  const zooms = wheel.ctrlKey || wheel.metaKey;
  const sideways = wheel.shiftKey ? wheel.deltaY || wheel.deltaX : wheel.deltaX;
  const pans = sideways !== 0 && (wheel.shiftKey || Math.abs(sideways) > Math.abs(wheel.deltaY));
  if (zooms) return zoomed(range, Math.exp(-wheel.deltaY / 300), valueAt(x, drawn), whole);
  return pans ? panned(range, (sideways / width) * (range.to - range.from), whole) : undefined;
}

/** One finger goes from `before` to `at` while another rests at `other` [px]. The points under the fingers stay under them. */
export function pinched(before: number, at: number, other: number, drawn: DrawnRange): TimeRange {
  const { range, width, whole } = drawn;
  const apart = (x: number) => Math.max(Math.abs(x - other), LEAST_FINGER_DISTANCE);
  const middle = valueAt((before + other) / 2, drawn);
  const shift = ((before - at) / 2 / width) * (range.to - range.from);
  return panned(zoomed(range, apart(at) / apart(before), middle, whole), shift, whole);
}

/** The range and the width that a gesture changes, read anew at every move. */
export interface RangeTarget extends DrawnRange {
  readonly onRange: (range: TimeRange) => void;
}

/** Gestures on a drawing along an axis: a drag on empty paper pans, two fingers zoom. Places are along the axis [px]. */
export class RangeHand {
  readonly #target: () => RangeTarget;
  readonly #fingers = new Map<number, number>();
  #drag: { readonly x: number; readonly from: RangeTarget } | undefined;

  constructor(target: () => RangeTarget) {
    this.#target = target;
  }

  /** True if the drag moves the drawing. `onPaper`: the drag begins on empty paper, not on a thing that can be moved. */
  down(finger: number, x: number, onPaper: boolean): boolean {
    this.#fingers.set(finger, x);
    this.#drag = this.#fingers.size === 1 && onPaper ? { x, from: this.#target() } : undefined;
    return this.#drag !== undefined;
  }

  /** True while two fingers move: then they move nothing in the drawing. */
  move(finger: number, x: number): boolean {
    const before = this.#fingers.get(finger);
    if (before === undefined) return false;
    const other = [...this.#fingers].find(([id]) => id !== finger)?.[1];
    this.#fingers.set(finger, x);
    if (other !== undefined) this.#target().onRange(pinched(before, x, other, this.#target()));
    else if (this.#drag) {
      const { range, width, whole, onRange } = this.#drag.from;
      onRange(panned(range, ((this.#drag.x - x) / width) * (range.to - range.from), whole));
    }
    return other !== undefined;
  }

  up(finger: number): void {
    this.#fingers.delete(finger);
    this.#drag = undefined;
  }
}
