/** A side view of a rig, not to scale in height. It marks the part that is being edited. */
import { groundHeight, type Rig } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { scaleOf } from "../scale.ts";
import { circle, group, path, type Shape, text } from "../shapes/shape.ts";

export const SKETCH_SIZE = { width: 320, height: 132 };
const EDGE_WIDTH = 26;
/** Height of the main line's ends [px]. */
const TOP = 40;

/** `editing`: path of the field that is edited. */
export function rigSketch(rig: Rig, editing: string | undefined): readonly Shape[] {
  const scale = scaleOf(0, rig.span, EDGE_WIDTH, SKETCH_SIZE.width - EDGE_WIDTH);
  const [a, middle, b] = [scale.px(0), scale.px(rig.span / 2), scale.px(rig.span)];
  const styled = (name: string, ...groups: string[]) => ({
    styled: editing !== undefined && groups.some((one) => editing.startsWith(one)) ? [name, "marked"] : name,
  });
  const backup = rig.backup;
  const sag = backup ? 16 + Math.min(40, backup.slack * 300) : 0;
  const joints = (backup?.connections ?? []).map(({ kind, at }) =>
    path(
      `M${scale.px(at * rig.span)} ${TOP + 3}v${20 * 4 * at * (1 - at)}`,
      styled(kind === "tape" ? "tape" : "connection", `backup.${kind}s`),
    ),
  );
  return [
    path(groundPath(rig, scale.px), styled("ground", "ground")),
    path(`M${a} ${TOP} Q${middle} ${TOP + 12} ${b} ${TOP}`, styled("line", "main")),
    ...(backup
      ? [
          path(
            `M${a} ${TOP + 2} Q${middle} ${TOP + sag} ${b} ${TOP + 2}`,
            styled("backup", "backup.s", "backup.l", "backup.end"),
          ),
        ]
      : []),
    ...joints,
    group(
      [
        circle(middle, TOP + 6, 3),
        path(`M${middle} ${TOP + 9}V${TOP + 24}`),
        path(`M${middle} ${TOP + 24}v12m-5 9 5-9 5 9M${middle - 6} ${TOP + 32}l6-4 6 4`),
        circle(middle, TOP + 20, 3.4),
      ],
      styled("walker", "leash", "rings", "walker", "harness"),
    ),
    circle(a, TOP, 4, styled("anchor", "anchorA")),
    circle(b, TOP, 4, styled("anchor", "anchorB")),
    text("A", a - 14, TOP + 4, { styled: "letter" }),
    text("B", b + 14, TOP + 4, { styled: "letter" }),
    group(
      [path(`M${a} 18H${b}M${a} 13v10M${b} 13v10`), text(quantity.length(rig.span), middle, 14)],
      styled("measure", "span", "rise"),
    ),
  ];
}

/** The ground's shape, its height fitted into the drawing. */
function groundPath(rig: Rig, x: (metres: number) => number): string {
  const { width, height } = SKETCH_SIZE;
  const places = Array.from({ length: 41 }, (_, i) => (i / 40) * rig.span);
  const levels = places.map((place) => groundHeight(rig, place));
  const lowest = Math.min(...levels, -1);
  const y = (level: number) => TOP + 4 + (Math.min(0, level) / lowest) * (height - TOP - 14);
  const points = places.map((place, i) => `${x(place).toFixed(1)} ${y(levels[i]!).toFixed(1)}`);
  return `M0 ${TOP + 6}L${points.join("L")}L${width} ${TOP + 6}V${height}H0Z`;
}
