/** Zooming and panning a drawing along the webbing: two fingers, Ctrl and the wheel, a drag on empty paper. */

import { type Drawn, panned, pinched, wheeled } from "@secondline/figures/time";
import type { Stretch } from "@secondline/workbench";

/** What a gesture can reach; asked anew at every event. */
export interface AlongTarget extends Drawn {
  /** Left edge of the range in the drawing [px]. */
  readonly left: number;
  readonly onRange: (range: Stretch) => void;
}

/** Listens before the things in the drawing do: two fingers never move an entry. Returns what ends the listening. */
export function listenAlong(drawing: Element, target: () => AlongTarget): () => void {
  const fingers = new Map<number, number>();
  let drag: { readonly x: number; readonly from: AlongTarget } | undefined;
  const place = ({ clientX }: MouseEvent) => clientX - drawing.getBoundingClientRect().left - target().left;
  const ending = new AbortController();
  const options = { capture: true, signal: ending.signal };
  const on = <E extends Event>(name: string, act: (event: E) => void) =>
    drawing.addEventListener(name, act as EventListener, options);

  on<PointerEvent>("pointerdown", (event) => {
    fingers.set(event.pointerId, place(event));
    const onPaper = !(event.target as Element).closest("[role=slider]");
    drag = fingers.size === 1 && onPaper && event.button === 0 ? { x: place(event), from: target() } : undefined;
    if (drag) drawing.setPointerCapture(event.pointerId);
  });
  on<PointerEvent>("pointermove", (event) => {
    const before = fingers.get(event.pointerId);
    if (before === undefined) return;
    const at = place(event);
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    if (other !== undefined) {
      event.stopPropagation();
      target().onRange(pinched(before, at, other, target()));
    } else if (drag) {
      const { range, width, whole, onRange } = drag.from;
      onRange(panned(range, ((drag.x - at) / width) * (range.to - range.from), whole));
    }
    fingers.set(event.pointerId, at);
  });
  const up = (event: PointerEvent) => {
    fingers.delete(event.pointerId);
    drag = undefined;
  };
  on("pointerup", up);
  on("pointercancel", up);
  on("lostpointercapture", up);
  drawing.addEventListener(
    "wheel",
    (event) => {
      const next = wheeled(event as WheelEvent, place(event as WheelEvent), target());
      if (!next) return;
      event.preventDefault();
      target().onRange(next);
    },
    { passive: false, signal: ending.signal },
  );
  return () => ending.abort();
}
