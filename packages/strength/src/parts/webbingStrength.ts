/**
 * Strength along a line as a function of natural length: piecewise-constant zones. Every zone carries the factors of its
 * section's condition and of every wear that touches it. Overlapping wears of one kind add up; the factors of overlapping wears
 * of different kinds multiply.
 */
import type { Basis, WebbingSection } from "@secondline/rig";
import { constant } from "../derating/constantValues.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { combineFactors, lowValue, shownFactors } from "../derating/lognormal.ts";
import { ownFactors } from "../derating/own.ts";
import { noteFact, within } from "../noteFacts.ts";
import { builtInFactors, type FactorsOf } from "../retention/testedStock.ts";
import { conditionFactors, overMonthsOutside } from "./textileCondition.ts";
import type { WrittenWear } from "./webbingWear/wearKind.ts";
import { addedUp, wearExtent, wearFactor, wearTitle } from "./webbingWear/wearKinds.ts";

export interface StrengthZone {
  /** Natural length from the A end of the line [m]. */
  readonly from: number;
  readonly to: number;
  readonly rated: number;
  readonly ratedBasis: Basis;
  /** Central strength [N]. */
  readonly strength: number;
  /** 5 % value of strength [N]. */
  readonly strength5: number;
  readonly factors: readonly StrengthFactor[];
  /** The wear that makes this zone weaker than the rest, in words; "webbing" if there is none. */
  readonly reason: string;
  /** Index of the section it lies in. */
  readonly section: number;
}

const UNKNOWN_JOIN_NOTE = "how the sections are joined is not written down; taken as sewn";

interface Stretch {
  readonly from: number;
  readonly to: number;
  /** A wear, or a join that the document does not describe. */
  readonly of: WrittenWear | StrengthFactor;
}

interface SectionPlace {
  readonly factorsOf: FactorsOf;
  /** Path of the section in the rig document. */
  readonly at: string;
}

/**
 * Zones of a line of `length` natural metres made of `sections`, in order from A; `at` is the path of the list of sections in the
 * rig document, for naming blanks. Throws when the sections do not fit the length: the rig check has seen to that before.
 */
export function webbingStrength(
  sections: readonly WebbingSection[],
  length: number,
  factorsOf: FactorsOf = builtInFactors,
  at = "main.sections",
): StrengthZone[] {
  const bounds = sectionBounds(sections, length);
  const place = (i: number): SectionPlace => ({ factorsOf, at: `${at}[${i}]` });
  const stretches = sections.flatMap((section, i) => wearStretches(section, bounds[i]!, bounds[i + 1]!, place(i).at));
  stretches.push(...joins(sections, bounds, stretches, { factorsOf, at }));
  const zones: StrengthZone[] = [];
  sections.forEach((section, i) => {
    const known = factorsOf(section.stock);
    const own = [
      known.level(),
      ...conditionFactors({
        condition: section.condition,
        fibre: section.stock.fibre,
        what: "the webbing",
        at: `${at}[${i}].condition`,
        sun: known.sun,
      }),
      ...ownFactors(section.own),
    ];
    const weakenings = weakeningsIn(section, place(i));
    for (const [from, to] of cuts(bounds[i]!, bounds[i + 1]!, stretches)) {
      const here = weakenings(stretches.filter((s) => s.from < to && s.to > from));
      const factors = shownFactors([...own, ...here.map((s) => s.factor)]);
      const { strength, strength5 } = combineFactors(section.stock.rated.strength, factors);
      const { strength: rated, basis: ratedBasis } = section.stock.rated;
      zones.push({ from, to, rated, ratedBasis, strength, strength5, factors, reason: reasonOf(here), section: i });
    }
  });
  return zones;
}

interface Weakening {
  readonly factor: StrengthFactor;
  readonly reason: string;
}

/**
 * Factors of the stretches over the same metres of a section. The same wears give the same factor object in every zone in which
 * they lie.
 */
function weakeningsIn(section: WebbingSection, place: SectionPlace): (here: readonly Stretch[]) => Weakening[] {
  const known = new Map<string, Weakening>();
  const weakening = ({ wear, wearAt }: WrittenWear): Weakening => {
    const key = JSON.stringify([wearAt, wear]);
    const found = known.get(key) ?? {
      factor: wearFactor(wear, { section, ...place, wearAt }),
      reason: wearTitle(wear),
    };
    known.set(key, found);
    return found;
  };
  return (here) => {
    const worn = here.flatMap(({ of }) => ("wear" in of ? [of] : []));
    const joined = here.flatMap(({ of }) => ("wear" in of ? [] : [{ factor: of, reason: "join" }]));
    return [...addedUp(worn).map(weakening), ...joined];
  };
}

/** Zone with the least central strength. */
export function weakestZone(zones: readonly StrengthZone[]): StrengthZone {
  const first = zones[0];
  if (first === undefined) throw new Error("a line without zones has no weakest one");
  return zones.reduce((least, zone) => (zone.strength < least.strength ? zone : least), first);
}

/** Zone at a position [m from A]; at a border the weaker of the two. */
export function zoneAt(zones: readonly StrengthZone[], position: number): StrengthZone {
  const touching = zones.filter((z) => z.from <= position && position <= z.to);
  if (touching.length === 0) throw new Error(`position ${position} m lies outside the line`);
  return weakestZone(touching);
}

/** Borders of the sections along a line of `length`, 0 first [m]; the one section without a length takes up the rest. */
export function sectionBounds(sections: readonly WebbingSection[], length: number): number[] {
  const known = sections.reduce((sum, s) => sum + (s.length ?? 0), 0);
  const rest = length - known;
  if (sections.filter((s) => s.length === undefined).length !== 1) {
    throw new Error("exactly one section of a line leaves out its length");
  }
  if (rest <= 0) throw new Error(`sections of ${known} m leave nothing of a line of ${length} m`);
  const bounds = [0];
  for (const s of sections) bounds.push(bounds.at(-1)! + (s.length ?? rest));
  return bounds;
}

/** `at`: path of the section in the rig document. */
function wearStretches(section: WebbingSection, from: number, to: number, at: string): Stretch[] {
  return section.wear.flatMap((wear, i): Stretch[] => {
    // A zone of no falls says that there were none, and weakens nothing.
    if (wear.kind === "fallZone" && wear.falls === 0) return [];
    const [start, end] = wearExtent(wear);
    const clipped = { from: Math.max(from, from + start), to: Math.min(to, from + end) };
    return [{ ...clipped, of: { wear, wearAt: `${at}.wear[${i}]` } }];
  });
}

/** A join between sections without stitching in the document is taken as sewn, for want of other data. */
function joins(
  sections: readonly WebbingSection[],
  bounds: readonly number[],
  stretches: readonly Stretch[],
  { factorsOf, at }: SectionPlace,
): Stretch[] {
  return bounds.slice(1, -1).flatMap((border, i): Stretch[] => {
    const [from, to] = [border - constant("place.joinReach"), border + constant("place.joinReach")];
    if (stretches.some((s) => "wear" in s.of && s.of.wear.kind === "stitching" && s.from < to && s.to > from))
      return [];
    const seams = [i, i + 1].map((n) =>
      overMonthsOutside(factorsOf(sections[n]!.stock).sewing, {
        condition: sections[n]!.condition,
        what: "the join",
        at: `${at}[${n}].condition`,
      }),
    );
    const sewn = seams.reduce((worse, seam) => (lowValue(seam) < lowValue(worse) ? seam : worse));
    const note = noteFact("basis.standIn", { why: { brought: UNKNOWN_JOIN_NOTE }, note: within(sewn.basis.note) });
    const factor: StrengthFactor = { ...sewn, name: "join", noData: true, basis: { kind: "assumed", note } };
    return [{ from, to, of: factor }];
  });
}

/** Splits [from, to] at every border of a stretch inside it. */
function cuts(from: number, to: number, stretches: readonly Stretch[]): [number, number][] {
  const inner = stretches.flatMap((s) => [s.from, s.to]).filter((x) => x > from && x < to);
  const points = [...new Set([from, ...inner, to])].sort((a, b) => a - b);
  return points.slice(1).map((end, i) => [points[i]!, end]);
}

function reasonOf(here: readonly Weakening[]): string {
  const worst = [...here].sort((a, b) => a.factor.value - b.factor.value);
  return worst.length === 0 ? "webbing" : worst.map((s) => s.reason).join(" and ");
}
