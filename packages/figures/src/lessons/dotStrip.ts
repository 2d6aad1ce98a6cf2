/** One dot for each of many falls, at its load; dots that would cover one another are piled up. */
import { piled } from "../piled.ts";
import { scaleOf } from "../scale.ts";
import { circle, path, type Shape, text } from "../shapes/shape.ts";

const SIDE_MARGIN = 16;
const DOT_RADIUS = 5;
const AXIS_HEIGHT = 26;
export const STRIP_WIDTH = 560;

/** `loads`: of all falls, smallest first; the last one is drawn as the hardest [N]. `width`: of the drawing [px]. */
export function dotStrip(
  loads: readonly number[],
  width = STRIP_WIDTH,
): { readonly height: number; readonly shapes: readonly Shape[] } {
  const [from, to] = [500 * Math.floor(loads[0]! / 500), 500 * Math.ceil(loads.at(-1)! / 500)];
  const x = scaleOf(from, Math.max(to, from + 1), SIDE_MARGIN, width - SIDE_MARGIN);
  const places = loads.map(x.px);
  const levels = piled(places, 2 * DOT_RADIUS);
  const height = 2 * DOT_RADIUS * (1 + Math.max(...levels)) + AXIS_HEIGHT + 6;
  const base = height - AXIS_HEIGHT;
  const first = 1000 * Math.ceil(from / 1000);
  const ticks = Array.from({ length: Math.floor((to - from) / 1000) + 1 }, (_, i) => first + 1000 * i);
  const dots = places.map((at, i) =>
    circle(at, base - 4 - DOT_RADIUS - 2 * DOT_RADIUS * levels[i]!, DOT_RADIUS - 0.5, {
      styled: i === places.length - 1 ? "hardest" : "dot",
    }),
  );
  return {
    height,
    shapes: [
      path(`M${SIDE_MARGIN} ${base}H${width - SIDE_MARGIN}`, { styled: "axis" }),
      ...ticks
        .filter((force) => force <= to)
        .flatMap((force) => [
          path(`M${x.px(force)} ${base}v5`, { styled: "axis" }),
          text(`${force / 1000} kN`, x.px(force), height - 6, { textAnchor: "middle" }),
        ]),
      ...dots,
    ],
  };
}
