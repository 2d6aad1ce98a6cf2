/** One part of a rig and its strength. */
import { type Basis, type BasisKind, distinctFacts, type Fact } from "@secondline/rig";
import { outsideFact, type StrengthFactor } from "../derating/factor.ts";
import { combineFactors, shownFactors } from "../derating/lognormal.ts";
import { type NoteFact, noteFact, within } from "../noteFacts.ts";
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
  /**
   * Notes that a reader must see: factors beyond their range, parts without data, own judgements, factors that raise the
   * strength.
   */
  readonly flags: readonly Fact[];
  /** For webbing: strength along the natural length; the part's own numbers are those of the weakest zone. */
  readonly zones?: readonly StrengthZone[];
  /** For webbing and leash: the weakest place [m of natural length from A, or from the ring], and its cause. */
  readonly weakest?: { readonly at: number; readonly reason: string };
  /** Blanks of the rig document for which the strength is counted lower; the costliest first. */
  readonly blanks?: readonly BlankCost[];
  /**
   * Events of this part that no factor covers and nobody has judged since. As long as there is one, no verdict says that the
   * part holds.
   */
  readonly needsInspection?: readonly Fact[];
  /**
   * Quantities beyond the range of their factors, in sentences. As long as there is one, no verdict says that the part holds.
   */
  readonly beyond?: readonly Fact[];
}

/** A blank of the rig document and its price. */
export interface BlankCost {
  /** Path of the field, such as "main.endA.clamped". */
  readonly field: string;
  /** Strength with the blank, over the strength with the best possible value there [-]. */
  readonly costs: number;
}

/** Weakest basis first. */
const BASIS_ORDER: readonly BasisKind[] = ["assumed", "from memory", "common practice", "published", "tested"];

export function weakestFirst(bases: readonly Basis[]): Basis[] {
  const unique = [...new Map(bases.map((b) => [JSON.stringify([b.kind, b.note]), b])).values()];
  return unique.sort((a, b) => BASIS_ORDER.indexOf(a.kind) - BASIS_ORDER.indexOf(b.kind));
}

type Given = Pick<PartStrength, "id" | "name" | "rated" | "ratedBasis" | "factors" | "zones" | "weakest"> & {
  readonly needsInspection?: readonly Fact[] | undefined;
  /** Notes of the part besides those of its factors. */
  readonly notes?: readonly NoteFact[];
};

export function makePartStrength({ needsInspection, notes = [], ...part }: Given): PartStrength {
  const { rated, ratedBasis } = part;
  const factors = shownFactors(part.factors);
  // A line's flags and bases are those of all its zones: a factor beyond its range counts wherever it lies.
  const everywhere = [...factors, ...(part.zones ?? []).flatMap((z) => z.factors)];
  const noData = everywhere.some((f) => f.noData);
  return {
    ...combineFactors(rated, factors),
    bases: weakestFirst([ratedBasis, ...factors.map((f) => f.basis)]),
    noData,
    flags: [...(needsInspection ?? []), ...factorFlags(everywhere), ...notes],
    ...(needsInspection === undefined ? {} : { needsInspection }),
    ...beyondOf(part.name, everywhere),
    ...blanksOf(factors),
    ...part,
    factors,
  };
}

/** One sentence for every quantity beyond the range of its factor, whether it was written or left blank. */
function beyondOf(part: string, factors: readonly StrengthFactor[]): { readonly beyond?: readonly Fact[] } {
  const sentences = factors.flatMap(({ name, beyond, validity, blank }): NoteFact[] => {
    if (!beyond || validity === undefined) return [];
    const of = { name: { brought: part }, factor: { brought: name } };
    if (blank !== undefined) return [noteFact("beyond.unwritten", of)];
    return [noteFact("beyond.known", { ...of, outside: outsideFact(validity) })];
  });
  return sentences.length === 0 ? {} : { beyond: distinctFacts(sentences) };
}

/** One entry per blank field: the joint cost of all factors that stand in for it. */
function blanksOf(factors: readonly StrengthFactor[]): { readonly blanks?: readonly BlankCost[] } {
  const costs = new Map<string, number>();
  for (const { value, blank } of factors) {
    if (blank !== undefined && value < blank.best) {
      costs.set(blank.field, (costs.get(blank.field) ?? 1) * (value / blank.best));
    }
  }
  if (costs.size === 0) return {};
  const blanks = [...costs].map(([field, cost]) => ({ field, costs: cost }));
  return { blanks: blanks.sort((a, b) => a.costs - b.costs) };
}

/** Notes on factors without data, on own judgements, and on factors that raise the strength. */
const factorFlags = (factors: readonly StrengthFactor[]): NoteFact[] =>
  distinctFacts(factors.filter((f) => f.beyond || f.noData || f.flagged).map(factorFlag));

/** A factor that raises the strength is rounded up, so that nobody thinks too little of it. */
function factorFlag({ name, value, basis, flagged }: StrengthFactor): NoteFact {
  const values = { name: { brought: name }, note: within(basis.note) };
  if (!flagged) return noteFact("factor.told", values);
  // Rounded as shown, so that of two notes that read alike only one is told.
  if (value <= 1)
    return noteFact("factor.times", { ...values, value: { ratio: Math.floor(100 * value + 1e-9) / 100 } });
  const raise = Math.ceil(1000 * (value - 1) - 1e-9) / 1000;
  return noteFact("factor.raises", {
    ...values,
    value: { ratio: Math.ceil(100 * value - 1e-9) / 100, side: "up" },
    raise: { share: raise },
  });
}
