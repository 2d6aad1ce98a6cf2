/** A sewn loop: as rated when new, its thread weaker the longer it hangs outside. */
import { constant } from "../../derating/constants.ts";
import { textileMake } from "../../derating/make.ts";
import { ownFactors } from "../../derating/own.ts";
import { sewnLoopAgeing } from "../../derating/sewing.ts";
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
    const history = { ...conditionOfEnd(place), what: "the loop" };
    const factors = [
      textileMake(stock.id),
      ...conditionFactors({ ...history, fibre: stock.fibre, sun: factorsOf(stock).sun }),
      overMonthsOutside(sewnLoopAgeing, history),
      // The loop's own seam is in its rating.
      ...wornInEnd(place, {
        inside: constant("place.knotInside"),
        behind: constant("place.loopBehind"),
        own: "stitching",
      }),
      ...bend(end),
      ...doubts(section.own),
      ...ownFactors(end.own),
    ];
    return makePartStrength({ id, name, rated: end.rated.strength, ratedBasis: end.rated.basis, factors });
  },
};
