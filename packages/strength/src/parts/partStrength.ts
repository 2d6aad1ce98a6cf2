/** One part of a rig and what it holds. */
import { type Basis, type BasisKind, formatPercent, formatRatio } from "@secondline/rig";
import type { StrengthFactor } from "../derating/factor.ts";
import { combineFactors } from "../derating/lognormal.ts";
import type { StrengthZone } from "./webbingStrength.ts";

export interface PartStrength {
  /** Stable id: "harness", "leash", "ring", "main", "connection.0", "backup", "endA", "backup.endA", "anchorA.points.0" … */
  readonly id: string;
  readonly name: string;
  readonly rated: number;
  readonly ratedBasis: Basis;
  readonly factors: readonly StrengthFactor[];
  /** Central strength [N]. */
  readonly strength: number;
  /** 5 % value of strength [N]. */
  readonly strength5: number;
  /** 95 % value of strength [N]. */
  readonly strength95: number;
  /** Standard deviation of the logarithm of strength [-]. */
  readonly sigmaLog: number;
  /** Bases of the rated strength and of every factor, weakest first. */
  readonly bases: readonly Basis[];
  /** True when the cautious factor stands in for something nobody wrote down. */
  readonly noData: boolean;
  /** What a reader must know: factors beyond their range, parts without data, own judgements, what raises the strength. */
  readonly flags: readonly string[];
  /** For webbing: strength along the natural length; the part's own numbers are those of the weakest zone. */
  readonly zones?: readonly StrengthZone[];
  /** What nobody wrote down of it, and what that costs: strength as it counts over strength if it were as new [-]. */
  readonly blanks?: readonly { readonly field: string; readonly costs: number }[];
  /** For webbing and leash: where it is weakest [m of natural length from A, or from the ring], and why. */
  readonly weakest?: { readonly at: number; readonly reason: string };
}

/** Weakest basis first. */
const BASIS_ORDER: readonly BasisKind[] = ["assumed", "from memory", "common practice", "published", "tested"];

export function weakestFirst(bases: readonly Basis[]): Basis[] {
  const unique = [...new Map(bases.map((b) => [`${b.kind}: ${b.note}`, b])).values()];
  return unique.sort((a, b) => BASIS_ORDER.indexOf(a.kind) - BASIS_ORDER.indexOf(b.kind));
}

export function makePartStrength(
  part: Pick<PartStrength, "id" | "name" | "rated" | "ratedBasis" | "factors"> & Partial<PartStrength>,
): PartStrength {
  const { rated, ratedBasis, factors } = part;
  // A line's flags and bases are those of all its zones: a factor beyond its range counts wherever it lies.
  const everywhere = [...factors, ...(part.zones ?? []).flatMap((z) => z.factors)];
  const noData = everywhere.some((f) => f.noData);
  return {
    ...combineFactors(rated, factors),
    bases: weakestFirst([ratedBasis, ...factors.map((f) => f.basis)]),
    noData,
    flags: factorFlags(everywhere),
    ...part,
  };
}

/** Sentences about factors that rest on nothing known or on somebody's word, and about those that raise the strength. */
function factorFlags(factors: readonly StrengthFactor[]): string[] {
  const sentences = factors
    .filter((f) => f.beyond || f.noData || f.flagged)
    .map((f) => `${f.name}${f.flagged ? times(f.value) : ""}: ${f.basis.note}`);
  return [...new Set(sentences)];
}

function times(value: number): string {
  return ` × ${formatRatio(value)}${value > 1 ? `, RAISES the strength by ${formatPercent(value - 1)}` : ""}`;
}
