/** The weakest place of a rig among those made of one stock. Tests of the stock serve to know its 5 % value. */
import type { LineStock, Rig } from "@secondline/rig";
import type { StrengthFactor } from "../derating/factor.ts";
import { combineFactors, logCovariance } from "../derating/lognormal.ts";
import { partStrengths } from "../parts/partStrengths.ts";
import { builtInFactors, type FactorsOf, type StockFactors } from "../retention/testedStock.ts";

/** A part, or a stretch of a webbing. */
export interface RigPlace {
  readonly part: string;
  /** Index of the stretch, for webbing. */
  readonly zone?: number;
}

export interface PlaceStrength {
  readonly place: RigPlace;
  /** Natural metres from A, for webbing. */
  readonly at?: number;
  readonly reason?: string;
  /** Central value, and the strength that 19 of 20 such parts reach [N]. */
  readonly strength: number;
  readonly strength5: number;
  /** Standard deviation of the logarithm [-]. */
  readonly sigmaLog: number;
  readonly factors: readonly StrengthFactor[];
}

export const sameStock = (a: LineStock, b: LineStock): boolean =>
  a.id === b.id && a.name === b.name && a.rated.strength === b.rated.strength;

export function differentStocks(stocks: readonly LineStock[]): LineStock[] {
  const different: LineStock[] = [];
  for (const stock of stocks) if (!different.some((one) => sameStock(one, stock))) different.push(stock);
  return different;
}

/** Factors of one stock from tests, and of all other stocks the built-in ones. */
export function withFactors(stock: LineStock, factors: StockFactors): FactorsOf {
  return (asked) => (sameStock(asked, stock) ? factors : builtInFactors(asked));
}

/** The weakest place that is made of a stock, by its 5 % value. */
export function weakestOf(rig: Rig, stock: LineStock, factorsOf: FactorsOf): PlaceStrength | undefined {
  const places = placesOf(rig, stock, factorsOf);
  return places.reduce<PlaceStrength | undefined>(
    (least, one) => (least === undefined || one.strength5 < least.strength5 ? one : least),
    undefined,
  );
}

/** The same place with other factors. */
export function placeStrength(rig: Rig, { part, zone }: RigPlace, factorsOf: FactorsOf): PlaceStrength {
  const found = partStrengths(rig, factorsOf).find(({ id }) => id === part)!;
  if (zone === undefined) {
    const { strength, strength5, sigmaLog, factors, weakest } = found;
    return { place: { part }, strength, strength5, sigmaLog, factors, ...(weakest ? { reason: weakest.reason } : {}) };
  }
  const { factors, rated, reason, from, to } = found.zones![zone]!;
  return { place: { part, zone }, at: (from + to) / 2, reason, factors, ...combineFactors(rated, factors) };
}

function placesOf(rig: Rig, stock: LineStock, factorsOf: FactorsOf): PlaceStrength[] {
  return partStrengths(rig, factorsOf).flatMap((part): PlaceStrength[] => {
    const { id, zones, strength, strength5, sigmaLog, factors } = part;
    if (id === "leash" && sameStock(rig.leash.stock, stock)) {
      const reason = part.weakest === undefined ? {} : { reason: part.weakest.reason };
      return [{ place: { part: id }, strength, strength5, sigmaLog, factors, ...reason }];
    }
    if (id !== "main" && id !== "backup") return [];
    const { sections } = rig[id]!;
    return zones!.flatMap((zone, i) =>
      sameStock(sections[zone.section]!.stock, stock)
        ? [
            {
              place: { part: id, zone: i },
              at: (zone.from + zone.to) / 2,
              reason: zone.reason,
              factors: zone.factors,
              ...combineFactors(zone.rated, zone.factors),
            },
          ]
        : [],
    );
  });
}

/** The factor from which most of a place's scatter comes, and its share of the variance [-]. */
export function mattersMost({
  factors,
}: Pick<PlaceStrength, "factors">): { readonly factor: StrengthFactor; readonly share: number } | undefined {
  const total = logCovariance(factors, factors);
  if (total <= 0) return undefined;
  const shares = factors.map((factor) => ({ factor, share: logCovariance([factor], factors) / total }));
  return shares.reduce((most, one) => (one.share > most.share ? one : most));
}
