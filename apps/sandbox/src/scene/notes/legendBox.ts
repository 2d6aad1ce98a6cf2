import type { Box } from "./labelLayout.ts";

interface MovingBox extends Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}
const box: MovingBox = { left: 0, top: 0, right: 0, bottom: 0 };
const boxes: readonly Box[] = [box];
const none: readonly Box[] = [];

/** Where the legend lies in the picture, so that no label covers it. */
export function legendBox(host: HTMLElement | null): readonly Box[] {
  const legend = host?.closest("[data-scene]")?.parentElement?.querySelector<HTMLElement>("[data-legend]");
  if (!legend) return none;
  box.left = legend.offsetLeft;
  box.top = legend.offsetTop;
  box.right = box.left + legend.offsetWidth;
  box.bottom = box.top + legend.offsetHeight;
  return boxes;
}
