import { type FlatView, panFlat, zoomFlat } from "@secondline/figures/scene";

const PAN_STEP = 40;
const ZOOM_RATIO = 1.2;

/** Lets wheel, drag, pinch and keys move the elevation; `home` frames it anew. Returns what ends it. */
export function moveFlatView(host: HTMLElement, view: FlatView, home: () => void, redraw: () => void): () => void {
  const held = new Map<number, { x: number; y: number }>();
  const ending = new AbortController();
  const { signal } = ending;
  const place = (event: MouseEvent) => {
    const box = host.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  const zoom = (factor: number, x: number, y: number) =>
    zoomFlat(view, factor, x, y, host.clientWidth, host.clientHeight);

  host.addEventListener(
    "wheel",
    (event) => {
      event.preventDefault();
      const { x, y } = place(event);
      zoom(Math.exp(-event.deltaY * 0.0015), x, y);
      redraw();
    },
    { signal, passive: false },
  );
  host.addEventListener(
    "pointerdown",
    (event) => {
      if (isOnGrip(event)) return;
      host.setPointerCapture(event.pointerId);
      held.set(event.pointerId, place(event));
    },
    { signal },
  );
  host.addEventListener(
    "pointermove",
    (event) => {
      const before = held.get(event.pointerId);
      if (!before) return;
      const now = place(event);
      const other = [...held].find(([id]) => id !== event.pointerId)?.[1];
      if (other) {
        const was = Math.hypot(before.x - other.x, before.y - other.y);
        const is = Math.hypot(now.x - other.x, now.y - other.y);
        if (was > 1 && is > 1) zoom(is / was, 0.5 * (now.x + other.x), 0.5 * (now.y + other.y));
        panFlat(view, 0.5 * (now.x - before.x), 0.5 * (now.y - before.y));
      } else panFlat(view, now.x - before.x, now.y - before.y);
      held.set(event.pointerId, now);
      redraw();
    },
    { signal },
  );
  const release = (event: PointerEvent) => held.delete(event.pointerId);
  host.addEventListener("pointerup", release, { signal });
  host.addEventListener("pointercancel", release, { signal });
  host.addEventListener(
    "keydown",
    (event) => {
      if (event.ctrlKey || event.metaKey || event.altKey || isOnGrip(event)) return;
      const [dx, dy] = ARROWS[event.key] ?? [0, 0];
      if (dx !== 0 || dy !== 0) panFlat(view, dx * PAN_STEP, dy * PAN_STEP);
      else if (event.key === "+" || event.key === "=") zoom(ZOOM_RATIO, host.clientWidth / 2, host.clientHeight / 2);
      else if (event.key === "-") zoom(1 / ZOOM_RATIO, host.clientWidth / 2, host.clientHeight / 2);
      else if (event.key === "0") home();
      else return;
      event.preventDefault();
      event.stopPropagation();
      redraw();
    },
    { signal },
  );
  return () => ending.abort();
}

/** What lies over the picture to be taken hold of is moved by itself. */
const isOnGrip = ({ target }: Event): boolean => target instanceof Element && target.closest("[data-grip]") !== null;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
