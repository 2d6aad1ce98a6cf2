/** Frames a whole rig with its ground in a drawing of a given width. */
import { chordHeight } from "@secondline/rig";
import { type Projection, projectionOf } from "./projection.ts";
import type { SideView } from "./side.ts";

/** Room beside and above what is drawn [px]. */
const EDGE_WIDTH = 30;
const LEAST_HEIGHT = 150;
const MOST_HEIGHT = 300;

/** To scale where the drawing does not get too high by that; of a deep gap heights are drawn smaller. */
export function sideFrame({ site, points }: SideView, width: number): Projection {
  const { span, rise } = site;
  const [left, right] = [Math.min(0, ...points.map(([x]) => x)), Math.max(span, ...points.map(([x]) => x))];
  const heights = points.map(([, z]) => z);
  const [low, high] = [Math.min(0, rise, ...heights), Math.max(0, rise, ...heights)];
  const scaleX = (width - 2 * EDGE_WIDTH) / (right - left);
  const tall = Math.max(high - low, 1);
  const scaleZ = Math.min(scaleX, (MOST_HEIGHT - 2 * EDGE_WIDTH) / tall);
  const height = Math.max(Math.round(tall * scaleZ + 2 * EDGE_WIDTH), LEAST_HEIGHT);
  const frame = { x: (left + right) / 2, z: (low + high) / 2, scaleX, scaleZ, width, height };
  return projectionOf(frame, (x) => chordHeight(site, x));
}
