/** A weblock: the weaker of its metal and of the webbing that it clamps. */
import { type Condition, distinctFacts } from "@secondline/rig";
import { constant } from "../../derating/constantValues.ts";
import type { StrengthFactor } from "../../derating/factor.ts";
import { usedMetal } from "../../derating/make.ts";
import { type JudgementCounted, ownFactors } from "../../derating/own.ts";
import { possibleMonths, standIn, worstUpTo } from "../../derating/unknown.ts";
import { noteFact } from "../../noteFacts.ts";
import { makePartStrength, type PartStrength } from "../partStrength.ts";
import { conditionFactors } from "../textileCondition.ts";
import type { WearOf, WrittenWear } from "../webbingWear/wearKind.ts";
import { bend, type EndKind, type EndPlace } from "./endKind.ts";
import { wornInEnd } from "./wornInEnd.ts";

export const weblock: EndKind = {
  kind: "weblock",
  title: "Weblock",
  strength(place) {
    const [device, webbing] = [metal(place), webbingIn(place)];
    const part = weaker(place, device, webbing);
    // A verdict asks for the strength that 95 % of such ends reach. It is no more than that of the metal and no more than that
    // of the webbing, whichever has the lower central value.
    const strength5 = Math.min(part.strength5, device.strength5, webbing.strength5);
    // Even if the metal governs, an end does not hold if its webbing is beyond the range of a factor.
    return { ...part, strength5, ...(webbing.beyond === undefined ? {} : { beyond: webbing.beyond }) };
  },
};

/** The weaker of the two by its central value. */
function weaker(place: EndPlace, device: PartStrength, webbing: PartStrength): PartStrength {
  if (webbing.strength <= device.strength) return webbing;
  const { own, ...unjudged } = place.section;
  const without = webbingIn({ ...place, section: unjudged });
  if (own === undefined || device.strength <= without.strength) return device;
  // The webbing's judgement raises this end too, up to the strength of the device. So the end has the note as well.
  const factor = device.strength / without.strength;
  const capped: JudgementCounted = { factor, reason: own.reason, capped: true };
  return webbingIn({ ...place, section: { ...unjudged, own: capped } });
}

function metal({ id, name, end }: EndPlace): PartStrength {
  const factors = [usedMetal(), ...ownFactors(end.own)];
  return makePartStrength({ id, name, rated: end.rated.strength, ratedBasis: end.rated.basis, factors });
}

/** Condition of the webbing in a weblock, with its path in the rig document. */
interface Been {
  readonly condition: Condition;
  readonly at: string;
}

/** The webbing in the end has the condition of its section. If the end has a condition too, the worse of the two counts. */
function webbingIn(place: EndPlace): PartStrength {
  const { end, section, at, sectionAt } = place;
  const ofSection = webbingThrough(place, { condition: section.condition, at: `${sectionAt}.condition` });
  if (end.condition === undefined) return ofSection;
  const ofEnd = webbingThrough(place, { condition: end.condition, at: `${at}.condition` });
  const worse = ofEnd.strength5 < ofSection.strength5 ? ofEnd : ofSection;
  const beyond = distinctFacts([...(ofSection.beyond ?? []), ...(ofEnd.beyond ?? [])]);
  return {
    ...worse,
    strength: Math.min(ofSection.strength, ofEnd.strength),
    ...(beyond.length > 0 ? { beyond } : {}),
  };
}

function webbingThrough(place: EndPlace, been: Been): PartStrength {
  const { id, name, end, section, factorsOf } = place;
  const { stock } = section;
  const known = factorsOf(stock);
  const factors = [
    known.level(),
    ...conditionFactors({ ...been, fibre: stock.fibre, what: "the webbing in the weblock", sun: known.sun }),
    ...wornInEnd(
      place,
      { inside: constant("place.weblockMark") / 2, behind: constant("place.weblockBehind") },
      (before) => clamp(place, been.condition, before),
    ),
    ...bend(place),
    // The own judgement of the webbing counts in its weblock too; a doubt about this end comes on top.
    ...ownFactors(section.own),
    ...ownFactors(end.own),
  ];
  return makePartStrength({ id, name, rated: stock.rated.strength, ratedBasis: stock.rated.basis, factors });
}

/**
 * If the months in the clamp are blank, they are as many as the webbing can have been outside. `before`: an earlier clamp at
 * the same place; the months add, and the heavier load counts.
 */
function clamp(
  { end, section, at, factorsOf, standing = 0 }: EndPlace,
  condition: Condition,
  before?: WrittenWear<WearOf<"clampMark">>,
): StrengthFactor {
  const { strength } = section.stock.rated;
  // A load above the usual one bites deeper. A light line does not get the benefit of its low tension, because falls load it
  // too.
  const usual = Math.max(constant("clamp.usualLoad"), standing / strength);
  const load = before === undefined ? 0 : before.wear.load;
  const share = load === undefined ? "unknown" : Math.max(usual, load / strength);
  const after = (months: number) => factorsOf(section.stock).clamp(months + (before?.wear.months ?? 0), share);
  if (end.monthsClamped === undefined) {
    const months = possibleMonths(condition);
    const why = noteFact("why.weblock", { months: { months } });
    return standIn(worstUpTo(after, months), { field: `${at}.clamped`, best: after(0).value }, why);
  }
  if (before === undefined || load !== undefined) return after(end.monthsClamped);
  const best = factorsOf(section.stock).clamp(end.monthsClamped + before.wear.months, usual).value;
  const why = "the load in the clamp is not written down; the heaviest that makes a difference is counted";
  return standIn(after(end.monthsClamped), { field: `${before.wearAt}.load`, best }, why);
}
