/** Strength of the parts of an anchor. */
import type { AnchorPart, AnchorSide } from "@secondline/rig";
import { ownFactors } from "../derating/own.ts";
import { ANCHOR_KINDS } from "./anchor/anchorKinds.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";

/** Hardware first, then rock points: the order of the load's way. */
export function anchorStrengths(id: "anchorA" | "anchorB", side: AnchorSide): PartStrength[] {
  const where = id === "anchorA" ? "anchor A" : "anchor B";
  const strength = (list: "hardware" | "points") => (part: AnchorPart, i: number) =>
    makePartStrength({
      id: `${id}.${list}.${i}`,
      name: `${part.name}, ${where}`,
      rated: part.rated.strength,
      ratedBasis: part.rated.basis,
      factors: [...ANCHOR_KINDS[part.kind].factors({ part, side, at: `${id}.${list}[${i}]` }), ...ownFactors(part.own)],
      needsInspection: part.condition.needsInspection,
      notes: ANCHOR_KINDS[part.kind].unused?.(part) ?? [],
    });
  return [...side.hardware.map(strength("hardware")), ...side.points.map(strength("points"))];
}
