/** Zooming and panning a drawing along the webbing: two fingers, Ctrl and the wheel, a drag on empty paper. */
import { RangeHand, type RangeTarget, wheeled } from "@secondline/figures/time";

export interface AlongTarget extends RangeTarget {
  /** Left edge of the range in the drawing [px]. */
  readonly left: number;
}

/** Listens before the things in the drawing do: two fingers never move an entry. Returns what ends the listening. */
export function listenAlong(drawing: Element, target: () => AlongTarget): () => void {
  const hand = new RangeHand(target);
  const place = ({ clientX }: MouseEvent) => clientX - drawing.getBoundingClientRect().left - target().left;
  const ending = new AbortController();
  const options = { capture: true, signal: ending.signal };
  const on = <E extends Event>(name: string, act: (event: E) => void) =>
    drawing.addEventListener(name, act as EventListener, options);
  on<PointerEvent>("pointerdown", (event) => {
    const onPaper = !(event.target as Element).closest("[role=slider]") && event.button === 0;
    if (hand.down(event.pointerId, place(event), onPaper)) drawing.setPointerCapture(event.pointerId);
  });
  on<PointerEvent>("pointermove", (event) => hand.move(event.pointerId, place(event)) && event.stopPropagation());
  for (const name of ["pointerup", "pointercancel", "lostpointercapture"])
    on<PointerEvent>(name, ({ pointerId }) => hand.up(pointerId));
  const wheel = (event: Event) => {
    const next = wheeled(event as WheelEvent, place(event as WheelEvent), target());
    if (!next) return;
    event.preventDefault();
    target().onRange(next);
  };
  drawing.addEventListener("wheel", wheel, { passive: false, signal: ending.signal });
  return () => ending.abort();
}
