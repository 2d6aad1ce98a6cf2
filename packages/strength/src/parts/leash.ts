/** Strength of the leash: it gives way in its worst knot or seam, far below the ring. */
import { CAUTIOUS_LIMITS, distinctFacts, type Rig } from "@secondline/rig";
import type { StrengthFactor } from "../derating/factor.ts";
import { ownFactors } from "../derating/own.ts";
import { heatFactor, sheathSlipFactor } from "../derating/rope.ts";
import { standIn } from "../derating/unknown.ts";
import { noteFact } from "../noteFacts.ts";
import type { FactorsOf } from "../retention/testedStock.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";
import { conditionFactors, overMonthsOutside } from "./textileCondition.ts";

type Leash = Rig["leash"];

/** A place at which the leash may give way, with the factor of its knot or seam. */
interface LeashPlace {
  readonly where: "ring" | "middle" | "harness";
  readonly factor: StrengthFactor;
  readonly knotted: boolean;
}

/**
 * The weakest place by the strength that 95 % of such leashes reach. The central value is no higher than that of any place
 * either.
 */
export function leashStrength(leash: Leash, factorsOf: FactorsOf): PartStrength {
  const places = [...knots(leash, factorsOf), ...seams(leash, factorsOf)].map((place) =>
    leashAt(leash, place, factorsOf),
  );
  const weakest = places.reduce((least, one) => (one.strength5 < least.strength5 ? one : least));
  const beyond = distinctFacts(places.flatMap((one) => one.beyond ?? []));
  return {
    ...weakest,
    strength: Math.min(...places.map(({ strength }) => strength)),
    ...(beyond.length > 0 ? { beyond } : {}),
  };
}

function knots({ knots, stock }: Leash, factorsOf: FactorsOf): LeashPlace[] {
  const { knot } = factorsOf(stock);
  return knots.map(({ kind, where }) => ({ where, factor: knot(kind), knotted: true }));
}

/** An end of the leash that has no knot is sewn. The leash is rated as its bare rope, of which a seam keeps its share and ages outside. */
function seams({ knots, condition, stock }: Leash, factorsOf: FactorsOf): LeashPlace[] {
  const { sewing } = factorsOf(stock);
  const sewn = (["ring", "harness"] as const).filter((end) => knots.every(({ where }) => where !== end));
  const stitching = { condition, what: "the leash's stitching", at: "leash.condition" };
  return sewn.map((where) => ({ where, factor: overMonthsOutside(sewing, stitching), knotted: false }));
}

function leashAt(leash: Leash, { where, factor, knotted }: LeashPlace, factorsOf: FactorsOf): PartStrength {
  const { stock, length } = leash;
  const ofStock = factorsOf(stock);
  const at = { ring: 0, middle: length / 2, harness: length }[where];
  const history = { condition: leash.condition, what: "the leash", at: "leash.condition" };
  return makePartStrength({
    id: "leash",
    name: knotted ? `Leash, in its ${factor.name}` : "Leash",
    rated: stock.rated.strength,
    ratedBasis: stock.rated.basis,
    factors: [
      ofStock.level(),
      ...conditionFactors({ ...history, fibre: stock.fibre, sun: ofStock.sun }),
      ...fallAndSheathFactors(leash, ofStock.leashFalls),
      factor,
      ...ownFactors(leash.own),
    ],
    needsInspection: leash.condition.needsInspection,
    weakest: { at, reason: knotted ? `${factor.name} at the ${where}` : "stitching" },
  });
}

/** Falls, a slipped sheath, glazing. Flat webbing has no sheath. */
function fallAndSheathFactors(
  { stock, falls, sheathSlip, glazed }: Leash,
  leashFalls: (falls: number) => StrengthFactor,
): StrengthFactor[] {
  return [
    ...leashFieldFactors(falls, leashFalls, {
      field: "leash.falls",
      what: "the number of falls that the leash has held",
    }),
    ...(stock.form === "webbing"
      ? []
      : leashFieldFactors(sheathSlip, sheathSlipFactor, {
          field: "leash.sheathSlip",
          what: "whether the leash's sheath has slipped",
        })),
    ...leashFieldFactors(glazed, heatFactor, {
      field: "leash.glazed",
      what: "whether heat has glazed the leash",
    }),
  ];
}

interface LeashField {
  readonly field: "leash.falls" | "leash.sheathSlip" | "leash.glazed";
  readonly what: string;
}

function leashFieldFactors(
  quantity: number | undefined,
  factor: (quantity: number) => StrengthFactor,
  { field, what }: LeashField,
): StrengthFactor[] {
  if (quantity !== undefined) return quantity > 0 ? [factor(quantity)] : [];
  const most = CAUTIOUS_LIMITS[field][1];
  return [standIn(factor(most), { field, best: 1 }, noteFact("why.worst", { what: { brought: what } }))];
}
