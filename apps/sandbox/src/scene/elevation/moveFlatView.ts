import { FlatHand, type FlatView } from "@secondline/figures/scene";

/** Lets wheel, drag, pinch and keys move the elevation; `home` frames it anew. Returns what ends it. */
export function moveFlatView(host: HTMLElement, view: FlatView, home: () => void, redraw: () => void): () => void {
  const hand = new FlatHand(view, () => ({ width: host.clientWidth, height: host.clientHeight }));
  const ending = new AbortController();
  const { signal } = ending;
  const place = (event: MouseEvent) => {
    const box = host.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const wheel = (event: WheelEvent) => {
    event.preventDefault();
    hand.wheel(event.deltaY, place(event));
    redraw();
  };
  const down = (event: PointerEvent) => {
    if (isOnGrip(event)) return;
    host.setPointerCapture(event.pointerId);
    hand.down(event.pointerId, place(event));
  };
  const key = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey || isOnGrip(event)) return;
    if (event.key === "0") home();
    else if (!hand.key(event.key)) return;
    event.preventDefault();
    event.stopPropagation();
    redraw();
  };
  const release = (event: PointerEvent) => hand.up(event.pointerId);
  host.addEventListener("wheel", wheel, { signal, passive: false });
  host.addEventListener("pointerdown", down, { signal });
  host.addEventListener("pointermove", (event) => hand.move(event.pointerId, place(event)) && redraw(), { signal });
  host.addEventListener("pointerup", release, { signal });
  host.addEventListener("pointercancel", release, { signal });
  host.addEventListener("keydown", key, { signal });
  return () => ending.abort();
}

/** What lies over the picture to be taken hold of is moved by itself. */
const isOnGrip = ({ target }: Event): boolean => target instanceof Element && target.closest("[data-grip]") !== null;
