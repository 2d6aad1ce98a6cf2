/** The remaining strength of a webbing along its length, beside the required strength, on the scale of the ribbon above. */
import type { StrengthZone, WebbingState } from "@secondline/strength";
import { quantity, weakness } from "@secondline/words";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import { labelHeights } from "../labelHeights.ts";
import { roundTicks } from "../roundTicks.ts";
import { type Scale, scaleOf } from "../scale.ts";
import { circle, group, path, rect, type Shape, type TextLook, text, unspoken } from "../shapes/shape.ts";
import { shortfall, strengthPath } from "./strengthCurve.ts";

export interface StrengthPlot {
  readonly x: Scale;
  readonly zones: readonly StrengthZone[];
  /** Zones in the loaded span; all zones if there is no loaded span. */
  readonly loaded: readonly StrengthZone[];
  /** The weakest of those zones. */
  readonly worst: StrengthZone | undefined;
  /** [N] */
  readonly needed: number | undefined;
  readonly placement: WebbingState["placement"];
  readonly wide: boolean;
  /** Size of the whole drawing; the plot lies from `top` on, with this height [px]. */
  readonly width: number;
  readonly top: number;
  readonly height: number;
}

/** Scale of strength over the height of the plot: from 0 to a little more than the largest. */
export function strengthScale({ zones, needed, top, height }: StrengthPlot): Scale {
  const most = Math.max(needed ?? 0, ...zones.map((zone) => zone.strength));
  return scaleOf(0, most * 1.12, top + height, top);
}

export function strengthPlot(plot: StrengthPlot): readonly Shape[] {
  const { x, zones, loaded, worst, needed, placement, width, top } = plot;
  const y = strengthScale(plot);
  // The curves are named where they leave the picture.
  const last = zones.findLast((zone) => zone.from < x.to - 1e-9);
  const short = loaded.flatMap((zone) => {
    const box = needed === undefined ? undefined : shortfall(zone, needed, placement, x, y);
    return box ? [rect(box, { fill: { pattern: "short" } })] : [];
  });
  const curves = [
    path(strengthPath(zones, "strength", x, y), { fill: "none", stroke: "ink", strokeWidth: 1.25 }),
    path(strengthPath(zones, "strength5", x, y), { fill: "none", stroke: "accent", strokeWidth: 2.5 }),
  ];
  const limit = (load: number) =>
    path(`M${x.px(x.from)} ${y.px(load)}H${x.px(x.to)}`, {
      stroke: "failsInk",
      strokeWidth: 1.75,
      strokeDasharray: "7 4",
    });
  return [
    text(sayWear("strengthPlot.axis"), 0, top - 6, { styled: ["lane", "halo"] }),
    ...roundTicks(0, y.to / 1000, 4).map((tick) => level(tick, x, y)),
    group([...short, ...curves], { clip: "sight" }),
    ...(needed === undefined ? [] : [limit(needed)]),
    ...(last ? names(plot, y, last) : []),
    ...(worst ? [weakestPlace(worst, x, y, width)] : []),
  ];
}

const level = (kN: number, x: Scale, y: Scale): Shape =>
  unspoken([
    path(`M${x.px(x.from)} ${y.px(kN * 1000)}H${x.px(x.to)}`, { styled: "rule" }),
    text(String(kN), x.px(x.from) - 6, y.px(kN * 1000) + 4, { styled: "soft", textAnchor: "end" }),
  ]);

/** The curves by name, in the margin, or over their ends where there is none. */
function names({ x, needed, wide }: StrengthPlot, y: Scale, last: StrengthZone): readonly Shape[] {
  const labels = [
    { words: sayWear("strengthPlot.middle"), value: last.strength, fill: "ink" as const },
    { words: sayWear("strengthPlot.strength5"), value: last.strength5, fill: "accent" as const },
    ...(needed === undefined
      ? []
      : [
          {
            words: sayWear("strengthPlot.needs", { load: quantity.load(needed) }),
            value: needed,
            fill: "failsInk" as const,
          },
        ]),
  ];
  // Over their curves they make room upwards: below a label lies its own curve.
  const heights = wide
    ? labelHeights(labels.map(({ value }) => y.px(value) + 4))
    : labelHeights(labels.map(({ value }) => 6 - y.px(value))).map((height) => -height);
  const [at, textAnchor] = wide ? [x.px(x.to) + 6, "start" as const] : [x.px(x.to) - 30, "end" as const];
  return labels.map(({ words, fill }, i) =>
    text(words, at, heights[i]!, { styled: "halo", textAnchor, fill, fontWeight: 500 }),
  );
}

/** The weakest place with its strength and cause; if it is out of sight, words at the nearer edge say so. */
function weakestPlace(worst: StrengthZone, x: Scale, y: Scale, width: number): Shape {
  const place = (worst.from + worst.to) / 2;
  const look: TextLook = { styled: "halo", fontWeight: 500 };
  if (place < x.from || place > x.to) {
    const before = place < x.from;
    const what = sayWear("strengthPlot.at", {
      strength: quantity.strength(worst.strength5),
      place: formatLength(place),
    });
    return unspoken([
      before
        ? text(sayWear("strengthPlot.weakestLeft", { what }), x.px(x.from) + 4, y.px(0) - 8, {
            ...look,
            textAnchor: "start",
          })
        : text(sayWear("strengthPlot.weakestRight", { what }), x.px(x.to) - 4, y.px(0) - 8, {
            ...look,
            textAnchor: "end",
          }),
    ]);
  }
  const at = x.px(place);
  const below = y.px(worst.strength5);
  const words = `${quantity.strength(worst.strength5)}, ${weakness(worst.reason)}`;
  const flip = at + 14 + words.length * 6.3 > width - 8;
  return unspoken([
    path(`M${at} ${below + 3}l-5 9h10z`, { fill: "ink" }),
    text(words, flip ? at - 10 : at + 10, Math.min(below + 16, y.px(0) - 5), {
      ...look,
      textAnchor: flip ? "end" : "start",
    }),
  ]);
}

/**
 * The line that reads off the strength at a place, with the area that a pointer can take hold of. `shown`: it has been moved.
 */
export function readingLine({ x, top, height }: StrengthPlot, place: number, shown: boolean): readonly Shape[] {
  const at = x.px(place);
  const base = top + height;
  return [
    rect({ x: at - 12, y: top, width: 24, height: height + 22 }, { fill: "transparent" }),
    rect({ x: at - 9, y: base - 9, width: 18, height: 18 }, { rx: 9, styled: "focus" }),
    ...(shown ? [path(`M${at} ${top}V${base}`, { stroke: "softInk", strokeWidth: 1 })] : []),
    circle(at, base, 6, { fill: "raised", stroke: "accent", strokeWidth: 2 }),
  ];
}

/** The numbers at that place, on the side of the line that has more room. */
export function readingWords({ x, top }: StrengthPlot, place: number, here: StrengthZone): Shape {
  const at = x.px(place);
  const right = at < (x.px(x.from) + x.px(x.to)) / 2;
  const words = sayWear("strengthReader.middle", {
    place: formatLength(place),
    strength: quantity.strength(here.strength5),
    middle: quantity.strength(here.strength),
    reason: here.reason,
  });
  return text(words, right ? at + 8 : at - 8, top + 14, { styled: "halo", textAnchor: right ? "start" : "end" });
}
