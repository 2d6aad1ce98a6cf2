/** Strength of the leash: it gives way in its worst knot, far below the ring. */
import { CAUTIOUS_LIMITS, type Rig } from "@secondline/rig";
import type { StrengthFactor } from "../derating/factor.ts";
import { lowValue } from "../derating/lognormal.ts";
import { ownFactors } from "../derating/own.ts";
import { heatFactor, sheathSlipFactor } from "../derating/rope.ts";
import { sewnLoopAgeing } from "../derating/sewing.ts";
import { standIn } from "../derating/unknown.ts";
import type { FactorsOf } from "../retention/testedStock.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";
import { conditionFactors, overMonthsOutside } from "./textileCondition.ts";

type Leash = Rig["leash"];

export function leashStrength(leash: Leash, factorsOf: FactorsOf): PartStrength {
  const { stock, length } = leash;
  const ofStock = factorsOf(stock);
  const knots = leash.knots.map((knot) => ({ ...knot, factor: ofStock.knot(knot.kind) }));
  const worst = knots.reduce<(typeof knots)[number] | undefined>(
    (least, knot) => (least === undefined || lowValue(knot.factor) < lowValue(least.factor) ? knot : least),
    undefined,
  );
  const places = { ring: 0, middle: length / 2, harness: length } as const;
  const history = { condition: leash.condition, what: "the leash", at: "leash.condition" };
  const factors = [
    ofStock.level(),
    ...conditionFactors({ ...history, fibre: stock.fibre, sun: ofStock.sun }),
    ...fallAndSheathFactors(leash, ofStock.leashFalls),
    // A leash without a knot is sewn: as rated when new, its stitching ages outside.
    worst?.factor ?? overMonthsOutside(sewnLoopAgeing, { ...history, what: "the leash's stitching" }),
    ...ownFactors(leash.own),
  ];
  return makePartStrength({
    id: "leash",
    name: worst === undefined ? "Leash" : `Leash, in its ${worst.factor.name}`,
    rated: stock.rated.strength,
    ratedBasis: stock.rated.basis,
    factors,
    needsInspection: leash.condition.needsInspection,
    weakest: {
      at: worst === undefined ? 0 : places[worst.where],
      reason: worst === undefined ? "stitching" : `${worst.factor.name} at the ${worst.where}`,
    },
  });
}

/** Falls, a slipped sheath, glazing. Flat webbing has no sheath. */
function fallAndSheathFactors(
  { stock, falls, sheathSlip, glazed }: Leash,
  leashFalls: (falls: number) => StrengthFactor,
): StrengthFactor[] {
  return [
    ...known(falls, leashFalls, {
      field: "leash.falls",
      what: "the number of falls that the leash has held",
    }),
    ...(stock.form === "webbing"
      ? []
      : known(sheathSlip, sheathSlipFactor, {
          field: "leash.sheathSlip",
          what: "whether the leash's sheath has slipped",
        })),
    ...known(glazed, heatFactor, {
      field: "leash.glazed",
      what: "whether heat has glazed the leash",
    }),
  ];
}

interface LeashField {
  readonly field: "leash.falls" | "leash.sheathSlip" | "leash.glazed";
  readonly what: string;
}

function known(
  quantity: number | undefined,
  factor: (quantity: number) => StrengthFactor,
  { field, what }: LeashField,
): StrengthFactor[] {
  if (quantity !== undefined) return quantity > 0 ? [factor(quantity)] : [];
  const most = CAUTIOUS_LIMITS[field][1];
  return [standIn(factor(most), { field, best: 1 }, `${what} is not written down; the worst is counted`)];
}
