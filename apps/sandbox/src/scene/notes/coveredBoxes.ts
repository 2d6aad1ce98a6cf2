import type { LabelEdges } from "@secondline/figures/scene";

interface MovingBox extends LabelEdges {
  left: number;
  top: number;
  right: number;
  bottom: number;
}
const boxes: MovingBox[] = [];
const used: LabelEdges[] = [];

/** What a picture is framed beside. */
const PANELS = "[data-legend], [data-over-scene]";
/** What moves with the picture, too: no label goes under it. */
const ALL = "[data-legend], [data-over-scene], [data-over-labels]";

/**
 * Where things lie over the picture: the legend, whatever beside the scene is marked with `data-over-scene`, and, for labels,
 * with `data-over-labels`.
 */
export function coveredBoxes(host: HTMLElement | null, { panelsAlone = false } = {}): readonly LabelEdges[] {
  const scene = host?.closest("[data-scene]")?.parentElement;
  used.length = 0;
  if (!scene) return used;
  const frame = scene.getBoundingClientRect();
  const things = (scene.parentElement ?? scene).querySelectorAll(panelsAlone ? PANELS : ALL);
  for (let i = 0; i < things.length; i++) {
    const at = things[i]!.getBoundingClientRect();
    boxes[i] ??= { left: 0, top: 0, right: 0, bottom: 0 };
    const box = boxes[i]!;
    box.left = at.left - frame.left;
    box.top = at.top - frame.top;
    box.right = at.right - frame.left;
    box.bottom = at.bottom - frame.top;
    used.push(box);
  }
  return used;
}
