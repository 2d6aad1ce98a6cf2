/**
 * The interface of every kind of a line's end; one file per kind, listed in `endKinds.ts`. An end is as strong as the weaker of
 * its device and the webbing in it. Wear of the webbing inside the end counts.
 */
import { CAUTIOUS_LIMITS, type LineEnd, type OwnJudgement, type WebbingSection } from "@secondline/rig";
import { bendFactor } from "../../derating/bend.ts";
import { constant } from "../../derating/constantValues.ts";
import type { StrengthFactor } from "../../derating/factor.ts";
import { ownFactors } from "../../derating/own.ts";
import { standIn } from "../../derating/unknown.ts";
import type { FactorsOf } from "../../retention/testedStock.ts";
import type { PartStrength } from "../partStrength.ts";

/** One end of a line, with the section that it holds. */
export interface EndPlace {
  readonly id: string;
  readonly name: string;
  readonly end: LineEnd;
  readonly side: "A" | "B";
  readonly section: WebbingSection;
  /** Natural length of the section [m]. */
  readonly length: number;
  readonly factorsOf: FactorsOf;
  /** Paths of the end and of the section in the rig document. */
  readonly at: string;
  readonly sectionAt: string;
  /** Tension that the end has held all along; absent if unknown [N]. */
  readonly standing?: number;
}

export interface EndKind {
  readonly kind: LineEnd["kind"];
  readonly title: string;
  readonly strength: (place: EndPlace) => PartStrength;
}

/** Bend over the pin of a loop or knot, or over the drum of a weblock. A bend that nobody measured counts as the sharpest. */
export function bend({ end, at }: Pick<EndPlace, "end" | "at">): StrengthFactor[] {
  if (end.bend !== undefined) return [bendFactor(end.bend)];
  const field = `${at}.bend`;
  const why = "what the webbing bends over in this end is not written down; the sharpest bend is counted";
  return [standIn(bendFactor(CAUTIOUS_LIMITS.bend[0]), { field, best: bendFactor(constant("bend.full")).value }, why)];
}

/** A doubt about the webbing is also one about the knot or loop in it. A factor that raises the webbing does not raise them. */
export function doubts(own: OwnJudgement | undefined): StrengthFactor[] {
  return own?.factor !== undefined && own.factor > 1 ? [] : ownFactors(own);
}

/** A loop or knot is made of the section's webbing. It has the condition of the section unless it has one of its own. */
export function conditionOfEnd({ end, section, at, sectionAt }: EndPlace) {
  return end.condition === undefined
    ? { condition: section.condition, at: `${sectionAt}.condition` }
    : { condition: end.condition, at: `${at}.condition` };
}
