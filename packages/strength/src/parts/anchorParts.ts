/** Strength of the parts of an anchor. */
import type { AnchorPart, AnchorSide } from "@secondline/rig";
import type { StrengthFactor } from "../derating/factor.ts";
import { boltPlacement, noRecord, textileMake, usedMetal } from "../derating/make.ts";
import { ownFactors } from "../derating/own.ts";
import { riggedFactors } from "../derating/rigged.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";
import { conditionFactors } from "./textileCondition.ts";

/** Hardware first, then rock points: the order of the load's way. */
export function anchorStrengths(id: "anchorA" | "anchorB", side: AnchorSide): PartStrength[] {
  const where = id === "anchorA" ? "anchor A" : "anchor B";
  const strength = (part: AnchorPart, path: string): PartStrength =>
    makePartStrength({
      id: path,
      name: `${part.name}, ${where}`,
      rated: part.rated.strength,
      ratedBasis: part.rated.basis,
      factors: [...anchorFactors(part), ...riggedFactors(part.rigged), ...ownFactors(part.own)],
    });
  return [
    ...side.hardware.map((part, i) => strength(part, `${id}.hardware.${i}`)),
    ...side.points.map((part, i) => strength(part, `${id}.points.${i}`)),
  ];
}

function anchorFactors(part: AnchorPart): StrengthFactor[] {
  switch (part.kind) {
    case "bolt":
      return [boltPlacement()];
    case "shackle":
      return [usedMetal()];
    case "sling":
      // The document does not say what a sling is made of: polyamide loses most in the sun and in the wet.
      return [textileMake(part.name), ...conditionFactors(part.condition, "polyamide", "the sling")];
    default:
      return [noRecord(`the ${part.kind === "tree" ? "tree" : "part"}`)];
  }
}
