/** A knot in the line's own webbing or rope. */
import { constant } from "../../derating/constantValues.ts";
import { ownFactors } from "../../derating/own.ts";
import { makePartStrength } from "../partStrength.ts";
import { conditionFactors } from "../textileCondition.ts";
import { bend, conditionOfEnd, doubts, type EndKind } from "./endKind.ts";
import { wornInEnd } from "./wornInEnd.ts";

export const knot: EndKind = {
  kind: "knot",
  title: "Knotted end",
  strength(place) {
    const { id, name, end, section, factorsOf } = place;
    const { stock } = section;
    const known = factorsOf(stock);
    const factors = [
      known.level(),
      ...conditionFactors({
        ...conditionOfEnd(place),
        what: "the knotted end",
        fibre: stock.fibre,
        sun: known.sun,
      }),
      known.knot(end.knot ?? "unknown"),
      ...wornInEnd(place, { inside: constant("place.knotInside"), behind: constant("place.knotBehind") }),
      ...bend(place),
      ...doubts(section.own),
      ...ownFactors(end.own),
    ];
    return makePartStrength({ id, name, rated: end.rated.strength, ratedBasis: end.rated.basis, factors });
  },
};
