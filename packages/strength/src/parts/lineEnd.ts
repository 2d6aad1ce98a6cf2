/**
 * Strength of a line's end at an anchor: a weblock with the webbing in it, a sewn loop, or a knot. An end holds what
 * the weaker of its device and its webbing holds.
 */
import type { LineEnd, OwnJudgement, WebbingSection } from "@secondline/rig";
import { bendFactor } from "../derating/bend.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { usedMetal } from "../derating/make.ts";
import { ownFactors } from "../derating/own.ts";
import type { FactorsOf } from "../retention/testedStock.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";
import { conditionFactors } from "./textileCondition.ts";

export function lineEndStrength(
  id: string,
  name: string,
  end: LineEnd,
  section: WebbingSection,
  factorsOf: FactorsOf,
): PartStrength {
  if (end.kind === "weblock") {
    const device = weblockDevice(id, name, end);
    const webbing = webbingInWeblock(id, name, end, section, factorsOf);
    if (webbing.strength <= device.strength) return webbing;
    const { own, ...unjudged } = section;
    const without = webbingInWeblock(id, name, end, unjudged, factorsOf);
    if (own === undefined || device.strength <= without.strength) return device;
    // The webbing's judgement raises this end too, as far as the device holds: it must be said here as well.
    const factor = device.strength / without.strength;
    const capped = { factor, reason: `${own.reason}; counted up to what the weblock itself holds` };
    return webbingInWeblock(id, name, end, { ...unjudged, own: capped }, factorsOf);
  }
  const condition = end.condition ?? section.condition;
  const known = factorsOf(section.stock);
  const factors = [known.level(), ...conditionFactors(condition, section.stock.fibre, "the loop", known.sun)];
  const ratedShare = end.rated.strength / section.stock.rated.strength;
  if (end.kind === "sewnLoop") factors.push(known.sewnLoop(condition.monthsOutside ?? 0, ratedShare));
  else factors.push(known.webbingKnot());
  factors.push(...bend(end), ...doubts(section.own), ...ownFactors(end.own));
  return makePartStrength({ id, name, rated: end.rated.strength, ratedBasis: end.rated.basis, factors });
}

/** A doubt of the webbing is one of the knot or loop in it; what raises the webbing says nothing of them. */
const doubts = (own: OwnJudgement | undefined) => (own?.factor !== undefined && own.factor > 1 ? [] : ownFactors(own));

function weblockDevice(id: string, name: string, end: LineEnd): PartStrength {
  const factors = [usedMetal(), ...ownFactors(end.own)];
  return makePartStrength({ id, name, rated: end.rated.strength, ratedBasis: end.rated.basis, factors });
}

/** Without months in the clamp the webbing is taken to have sat in it as long as it has been outside. */
function webbingInWeblock(
  id: string,
  name: string,
  end: LineEnd,
  section: WebbingSection,
  factorsOf: FactorsOf,
): PartStrength {
  const { stock, condition } = section;
  const known = factorsOf(stock);
  const factors = [
    known.level(),
    ...conditionFactors(condition, stock.fibre, "the webbing in the weblock", known.sun),
    known.clamp(end.monthsClamped ?? condition.monthsOutside ?? 0),
    ...bend(end),
    // What is thought of the webbing counts in its weblock too; a doubt of this end comes on top.
    ...ownFactors(section.own),
    ...ownFactors(end.own),
  ];
  return makePartStrength({ id, name, rated: stock.rated.strength, ratedBasis: stock.rated.basis, factors });
}

function bend(end: LineEnd): StrengthFactor[] {
  return end.bend === undefined ? [] : [bendFactor(end.bend)];
}
