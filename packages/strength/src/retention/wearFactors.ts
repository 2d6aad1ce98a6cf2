/** The factors of a stock that own tests can feed, as they are built in. */
import type { FactValue, KnotKind, LineStock } from "@secondline/rig";
import { clampFactor } from "../derating/clampMark.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { fallsFactor } from "../derating/falls.ts";
import { ropeKnot, ropeKnotName, webbingKnot } from "../derating/knot.ts";
import { logSpread } from "../derating/lognormal.ts";
import { sewingFactor } from "../derating/sewing.ts";
import { sunFactor } from "../derating/sun.ts";
import { noteFact } from "../noteFacts.ts";

/** A cause that weakens a sample, besides its make; a knot in rope by its kind. */
export type WearId = "sun" | "falls" | "leash falls" | "clamp mark" | "sewing" | "knot in webbing" | `knot ${KnotKind}`;

/** One cause and its dose: months of full sun, falls, months in the clamp, months outside; 0 for a knot. */
export interface WearDose {
  readonly id: WearId;
  readonly dose: number;
}

export function builtInFactor(stock: LineStock, id: WearId, dose: number): StrengthFactor {
  switch (id) {
    case "sun":
      return sunFactor(stock.fibre, dose);
    case "falls":
      return fallsFactor(dose, "webbing");
    case "leash falls":
      return fallsFactor(dose, "leash");
    case "clamp mark":
      return clampFactor(dose);
    case "sewing":
      return sewingFactor(dose);
    case "knot in webbing":
      return webbingKnot();
    default:
      return ropeKnot(id.slice("knot ".length) as KnotKind);
  }
}

const LAST_DOSE_BY_KEY = new Map<string, number>();

/**
 * Largest dose for which the built-in factor is known; 0 if the factor depends on no dose. Of the stock only the fibre matters.
 */
export function lastDose(stock: LineStock, id: WearId): number {
  const key = `${id} of ${stock.fibre}`;
  const known = LAST_DOSE_BY_KEY.get(key);
  if (known !== undefined) return known;
  const last = builtInFactor(stock, id, 0).validity?.to ?? 0;
  LAST_DOSE_BY_KEY.set(key, last);
  return last;
}

/** Index of the tested dose nearest to a dose. */
export function nearestDose(doses: readonly number[], dose: number): number {
  let nearest = 0;
  for (let k = 1; k < doses.length; k++) {
    if (Math.abs(doses[k]! - dose) < Math.abs(doses[nearest]! - dose)) nearest = k;
  }
  return nearest;
}

/** Variance of the logarithm: `common` can be learnt from tests, `own` scatters from sample to sample [-]. */
export function builtInVariance({ spread, shared }: StrengthFactor): { readonly common: number; readonly own: number } {
  const total = logSpread(spread) ** 2;
  return { common: shared * total, own: (1 - shared) * total };
}

/** A built-in factor as numbers: ln of its value, and its variances [-]. */
export interface BuiltInAt {
  readonly log: number;
  readonly common: number;
  readonly own: number;
}

const BUILT_IN_OF_STOCK = new WeakMap<LineStock, Map<WearId, Map<number, BuiltInAt>>>();
/** Most doses that are kept: more than any log has. A session that lasts must not keep them all [-]. */
const MOST_KEPT_DOSES = 20_000;

/** Each factor is worked out once: thousands of tests ask for few different ones, again and again. */
export function builtInAt(stock: LineStock, { id, dose }: WearDose): BuiltInAt {
  const ofStock = BUILT_IN_OF_STOCK.get(stock) ?? new Map<WearId, Map<number, BuiltInAt>>();
  BUILT_IN_OF_STOCK.set(stock, ofStock);
  const kept = ofStock.get(id) ?? new Map<number, BuiltInAt>();
  ofStock.set(id, kept);
  const known = kept.get(dose);
  if (known !== undefined) return known;
  const factor = builtInFactor(stock, id, dose);
  const found = { log: Math.log(factor.value), ...builtInVariance(factor) };
  if (kept.size >= MOST_KEPT_DOSES) kept.clear();
  kept.set(dose, found);
  return found;
}

/** ln of the product of the built-in factors. */
export function builtInLog(stock: LineStock, doses: readonly WearDose[]): number {
  return doses.reduce((sum, wear) => sum + builtInAt(stock, wear).log, 0);
}

/** Variances of the built-in factors of a state, summed. */
export function builtInSpread(stock: LineStock, doses: readonly WearDose[]) {
  let [common, own] = [0, 0];
  for (const wear of doses) {
    const v = builtInAt(stock, wear);
    common += v.common;
    own += v.own;
  }
  return { common, own };
}

const DOSE_WORDS: Readonly<Record<string, string>> = {
  sun: "months of full sun",
  falls: "falls",
  "leash falls": "falls",
  "clamp mark": "months in the clamp",
  sewing: "months outside",
};

/** Unit of the dose of a wear; undefined for a knot. */
export const doseUnit = (id: WearId): string | undefined => DOSE_WORDS[id];

/** The dose of a wear with its unit; for a knot its name. */
export function doseFact({ id, dose }: WearDose): FactValue {
  const values = { dose: Number(dose.toPrecision(3)) };
  switch (id) {
    case "sun":
      return noteFact("dose.sun", values);
    case "falls":
    case "leash falls":
      return noteFact("dose.falls", values);
    case "clamp mark":
      return noteFact("dose.clampMark", values);
    case "sewing":
      return noteFact("dose.sewing", values);
    default:
      return { brought: wearName(id) };
  }
}

/** The name of a wear for people: "sun", "figure-eight knot". */
export const wearName = (id: WearId): string =>
  id.startsWith("knot ") && id !== "knot in webbing"
    ? `${ropeKnotName(id.slice("knot ".length) as KnotKind)} knot`
    : id;

/** "14 months of full sun", "clamp mark after 14 months in the clamp", "figure-eight knot". */
export function doseText({ id, dose }: WearDose): string {
  const unit = DOSE_WORDS[id];
  if (unit === undefined) return wearName(id);
  const amount = `${Number(dose.toPrecision(3))} ${unit}`;
  return id === "sun" || id === "falls" || id === "leash falls" ? amount : `${id} after ${amount}`;
}
