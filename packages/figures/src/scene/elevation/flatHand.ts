/**
 * Pointer and keys on the elevation: a drag pans, two fingers and the wheel zoom, and so do keys. Places are in the
 * picture [px].
 */
import { type FlatView, panFlat, zoomFlat } from "./flatView.ts";

const PAN_STEP = 40;
const ZOOM_RATIO = 1.2;

interface Place {
  readonly x: number;
  readonly y: number;
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

export class FlatHand {
  readonly #view: FlatView;
  readonly #size: () => { readonly width: number; readonly height: number };
  readonly #held = new Map<number, Place>();

  constructor(view: FlatView, size: () => { readonly width: number; readonly height: number }) {
    this.#view = view;
    this.#size = size;
  }

  down(finger: number, at: Place): void {
    this.#held.set(finger, at);
  }

  /** True where the view has moved. */
  move(finger: number, now: Place): boolean {
    const before = this.#held.get(finger);
    if (!before) return false;
    const other = [...this.#held].find(([id]) => id !== finger)?.[1];
    if (other) {
      const was = Math.hypot(before.x - other.x, before.y - other.y);
      const is = Math.hypot(now.x - other.x, now.y - other.y);
      if (was > 1 && is > 1) this.#zoom(is / was, { x: 0.5 * (now.x + other.x), y: 0.5 * (now.y + other.y) });
      panFlat(this.#view, 0.5 * (now.x - before.x), 0.5 * (now.y - before.y));
    } else panFlat(this.#view, now.x - before.x, now.y - before.y);
    this.#held.set(finger, now);
    return true;
  }

  up(finger: number): void {
    this.#held.delete(finger);
  }

  wheel(turn: number, at: Place): void {
    this.#zoom(Math.exp(-turn * 0.0015), at);
  }

  /** True where the key moves the view. */
  key(key: string): boolean {
    const { width, height } = this.#size();
    const middle = { x: width / 2, y: height / 2 };
    const [dx, dy] = ARROWS[key] ?? [0, 0];
    if (dx !== 0 || dy !== 0) panFlat(this.#view, dx * PAN_STEP, dy * PAN_STEP);
    else if (key === "+" || key === "=") this.#zoom(ZOOM_RATIO, middle);
    else if (key === "-") this.#zoom(1 / ZOOM_RATIO, middle);
    else return false;
    return true;
  }

  #zoom(factor: number, { x, y }: Place): void {
    const { width, height } = this.#size();
    zoomFlat(this.#view, factor, x, y, width, height);
  }
}
