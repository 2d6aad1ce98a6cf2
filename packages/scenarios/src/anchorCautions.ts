/** What must be read of the anchors: how their points share, and legs that meet at a wide angle. */
import { type AnchorSide, formatAngle, type Rig } from "@secondline/rig";
import type { PartStrength } from "@secondline/strength";
import { legShare } from "./anchorLegs.ts";
import { fixedDown, fixedUp } from "./rounding.ts";

export interface AnchorFacts {
  readonly name: "A" | "B";
  readonly points: number;
  /** Between the outermost legs [rad]. */
  readonly legAngle: number;
  /** Share of the load that each of two legs is taken to carry [-]. */
  readonly share: number;
  /** The weakest of several points, and its strength over the largest load of the whole anchor [-]. */
  readonly alone?: { readonly part: string; readonly margin: number };
}

/** `loads`: largest load of either anchor as a whole [N]. */
export function anchorFacts(
  rig: Rig,
  parts: readonly PartStrength[],
  loads: Readonly<Record<"A" | "B", number>>,
): readonly AnchorFacts[] {
  const facts = (name: "A" | "B", side: AnchorSide): AnchorFacts => {
    const points = parts.filter(({ id }) => id.startsWith(`anchor${name}.points.`));
    const [weakest] = [...points].sort((a, b) => a.strength - b.strength);
    const shared = points.length > 1 && weakest !== undefined && loads[name] > 0;
    return {
      name,
      points: side.points.length,
      legAngle: side.legAngle,
      share: legShare(side),
      ...(shared ? { alone: { part: weakest.name, margin: weakest.strength / loads[name] } } : {}),
    };
  };
  return [facts("A", rig.anchorA), facts("B", rig.anchorB)];
}

const WIDE = Math.PI / 2;
const WIDEST = (2 * Math.PI) / 3;
/** An angle that is meant to be 90° or 120° may miss it by the last bit when it is read [rad]. */
const ROUNDING = 1e-9;
const TABLE = "a lifting association's table, seen second hand, counts two legs";

export function anchorCautions(anchors: readonly AnchorFacts[], required: number): string[] {
  const several = anchors.filter(({ points }) => points > 1);
  const one = anchors.filter(({ points }) => points === 1);
  return [
    ...several.flatMap(angle),
    ...(several.length > 0 ? [sharing(several, required)] : []),
    ...(one.length > 0 ? [single(one)] : []),
  ];
}

function angle({ name, points, legAngle, share }: AnchorFacts): string[] {
  if (points < 2 || legAngle <= WIDE + ROUNDING) return [];
  const meet = `The legs of anchor ${name} meet at ${formatAngle(legAngle)}: each of two carries ${fixedUp(share, 2)} times the whole load`;
  return legAngle > WIDEST + ROUNDING
    ? [`${meet}, more than one leg alone would. Do not rig it so: ${TABLE} up to 120° only.`]
    : [`${meet}. Keep them below 90° (common practice); ${TABLE} at 1.4 times one leg up to 90°, as one leg beyond.`];
}

function sharing(anchors: readonly AnchorFacts[], required: number): string {
  const said = `The points of ${named(anchors)} are taken to share by the angle of their legs. Nothing makes them: a fixed anchor pulled to one side, or legs of unequal length, can load one leg with nearly all of it.`;
  const alone = anchors.flatMap((one) => one.alone ?? []);
  if (alone.length === 0) return said;
  const keeps = alone.map(
    ({ part, margin }) => `${part} ${fixedDown(margin, 1)} times${margin < required ? ", LESS than you require" : ""}`,
  );
  return `${said} Alone, the weakest of them would hold the largest load of the whole anchor: ${keeps.join("; ")}.`;
}

const single = (anchors: readonly AnchorFacts[]) =>
  `There is one point at ${named(anchors)}: nothing takes its load when that goes, and no what-if here looks at it.`;

function named(anchors: readonly AnchorFacts[]): string {
  return anchors.length === 1 ? `anchor ${anchors[0]!.name}` : "anchors A and B";
}
