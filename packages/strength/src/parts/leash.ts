/** Strength of the leash: it gives way in its worst knot, far below the ring. */
import type { Rig } from "@secondline/rig";
import { noRecord } from "../derating/make.ts";
import { ownFactors } from "../derating/own.ts";
import { heatFactor, sheathSlipFactor } from "../derating/rope.ts";
import { sewnLoopAgeing } from "../derating/sewing.ts";
import type { FactorsOf } from "../retention/testedStock.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";
import { conditionFactors } from "./textileCondition.ts";

export function leashStrength(leash: Rig["leash"], factorsOf: FactorsOf): PartStrength {
  const { stock, condition, length, falls } = leash;
  const known = factorsOf(stock);
  const knots = leash.knots.map((knot) => ({ ...knot, factor: known.knot(knot.kind) }));
  const worst = knots.reduce<(typeof knots)[number] | undefined>(
    (least, knot) => (least === undefined || knot.factor.value < least.factor.value ? knot : least),
    undefined,
  );
  const places = { ring: 0, middle: length / 2, harness: length } as const;
  const factors = [known.level(), ...conditionFactors(condition, stock.fibre, "the leash", known.sun)];
  if (falls > 0) factors.push(known.leashFalls(falls));
  if (leash.sheathSlip !== undefined && leash.sheathSlip > 0) factors.push(sheathSlipFactor(leash.sheathSlip));
  if (leash.glazed !== undefined && leash.glazed > 0) factors.push(heatFactor(leash.glazed));
  // A leash without a knot is sewn: as rated when new, its stitching ages outside.
  if (worst !== undefined) factors.push(worst.factor);
  else if (condition.monthsOutside !== undefined) factors.push(sewnLoopAgeing(condition.monthsOutside));
  else factors.push(noRecord("the leash's stitching"));
  factors.push(...ownFactors(leash.own));
  return makePartStrength({
    id: "leash",
    name: worst === undefined ? "Leash" : `Leash, in its ${worst.factor.name}`,
    rated: stock.rated.strength,
    ratedBasis: stock.rated.basis,
    factors,
    weakest: {
      at: worst === undefined ? 0 : places[worst.where],
      reason: worst === undefined ? "stitching" : `${worst.factor.name} at the ${worst.where}`,
    },
  });
}
