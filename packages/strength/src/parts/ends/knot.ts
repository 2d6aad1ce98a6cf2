/** A knot in the line's own webbing or rope. */
import { constant } from "../../derating/constants.ts";
import { knotIn } from "../../derating/knot.ts";
import { textileMake } from "../../derating/make.ts";
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
    const factors = [
      textileMake(stock.id),
      ...conditionFactors({
        ...conditionOfEnd(place),
        what: "the knotted end",
        fibre: stock.fibre,
        sun: factorsOf(stock).sun,
      }),
      knotIn(stock, end.knot ?? "unknown"),
      ...wornInEnd(place, { inside: constant("place.knotInside"), behind: constant("place.knotBehind") }),
      ...bend(end),
      ...doubts(section.own),
      ...ownFactors(end.own),
    ];
    return makePartStrength({ id, name, rated: end.rated.strength, ratedBasis: end.rated.basis, factors });
  },
};
