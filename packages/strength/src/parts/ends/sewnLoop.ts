/** A sewn loop: as rated when new, its thread weaker the longer it hangs outside. */
import { constant } from "../../derating/constantValues.ts";
import { ownFactors } from "../../derating/own.ts";
import { makePartStrength } from "../partStrength.ts";
import { conditionFactors, overMonthsOutside } from "../textileCondition.ts";
import { bend, conditionOfEnd, doubts, type EndKind } from "./endKind.ts";
import { wornInEnd } from "./wornInEnd.ts";

export const sewnLoop: EndKind = {
  kind: "sewnLoop",
  title: "Sewn loop",
  strength(place) {
    const { id, name, end, section, factorsOf } = place;
    const { stock } = section;
    const known = factorsOf(stock);
    const ratedShare = end.rated.strength / stock.rated.strength;
    const history = { ...conditionOfEnd(place), what: "the loop" };
    const factors = [
      known.level(),
      ...conditionFactors({ ...history, fibre: stock.fibre, sun: known.sun }),
      overMonthsOutside((months) => known.sewnLoop(months, ratedShare), history),
      // The loop's own seam is in its rating.
      ...wornInEnd(place, {
        inside: constant("place.knotInside"),
        behind: constant("place.loopBehind"),
        own: "stitching",
      }),
      ...bend(place),
      ...doubts(section.own),
      ...ownFactors(end.own),
    ];
    return makePartStrength({ id, name, rated: end.rated.strength, ratedBasis: end.rated.basis, factors });
  },
};
