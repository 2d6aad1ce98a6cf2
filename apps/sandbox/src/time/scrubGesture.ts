import { fitRange } from "@secondline/figures/time";
import { Scrubbing, type ScrubTarget } from "@secondline/workbench";

/**
 * One pointer scrubs and a press goes to what it means; two zoom and pan; Ctrl and the wheel zoom, Shift and the wheel or a
 * sideways wheel pan; Shift and a drag measure; a double press shows the whole run. Returns what ends the listening.
 */
export function listenForScrubbing(surface: HTMLElement, target: () => ScrubTarget): () => void {
  const hand = new Scrubbing(target);
  const ending = new AbortController();
  const { signal } = ending;
  const place = (event: MouseEvent) => {
    const box = surface.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top - target().above };
  };
  const down = (event: PointerEvent) => {
    if (event.button !== 0) return;
    surface.setPointerCapture(event.pointerId);
    surface.focus({ preventScroll: true });
    hand.down(event.pointerId, place(event), event.shiftKey);
  };
  const up = (event: PointerEvent) => hand.up(event.pointerId, place(event), event.type === "pointerup");
  surface.addEventListener("pointerdown", down, { signal });
  surface.addEventListener("pointermove", (event) => hand.move(event.pointerId, place(event)), { signal });
  surface.addEventListener("pointerup", up, { signal });
  surface.addEventListener("pointercancel", up, { signal });
  surface.addEventListener("wheel", (event) => hand.wheel(event, place(event)) && event.preventDefault(), {
    signal,
    passive: false,
  });
  surface.addEventListener("dblclick", () => target().onRange(fitRange(target().duration)), { signal });
  return () => ending.abort();
}
