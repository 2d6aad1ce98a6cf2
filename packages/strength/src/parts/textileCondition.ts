/** Factors of a textile part's condition: sun, age, wet. A blank counts as the worst possible value. */
import type { Condition, Fibre } from "@secondline/rig";
import { ageFactor } from "../derating/age.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { conditionSunMonths, sunFactor } from "../derating/sun.ts";
import { DARKEST_LATITUDE, latitudeWeight } from "../derating/sunDose.ts";
import { possibleMonths, possibleSun, possibleYears, standIn, worstUpTo } from "../derating/unknown.ts";
import { wetFactor } from "../derating/wet.ts";
import { noteFact } from "../noteFacts.ts";

export interface Textile {
  readonly condition: Condition;
  readonly fibre: Fibre;
  /** The part in words, such as "the leash". */
  readonly what: string;
  /** Path of its condition in the rig document. */
  readonly at: string;
  /** Replaces the built-in curve if there are tests. */
  readonly sun?: (months: number) => StrengthFactor;
}

/** Leaves out factors that take nothing away. */
export function conditionFactors(textile: Textile): StrengthFactor[] {
  return [...sunFactors(textile), ...ageFactors(textile), ...wetFactors(textile)];
}

function sunFactors({ condition, fibre, what, at, sun = (months) => sunFactor(fibre, months) }: Textile) {
  const known = conditionSunMonths(condition);
  if (known !== undefined) {
    if (known <= 0) return [];
    if (condition.sunMonths !== undefined) return [sun(known)];
    if (condition.sun === undefined) return [{ ...sun(known), blank: { field: `${at}.sun`, best: 1 } }];
    return [condition.latitude === undefined ? sunSomewhere(known, sun) : sun(known)];
  }
  const possible = possibleSun(condition);
  if (possible <= 0) return [];
  const why = noteFact("why.sun", { what: { brought: what }, months: { months: possibleMonths(condition) } });
  return [standIn(worstUpTo(sun, possible), { field: `${at}.outside`, best: 1 }, why)];
}

/** `known`: the sun of the written months at the sunniest latitude [months of full sun]. */
function sunSomewhere(known: number, sun: (months: number) => StrengthFactor): StrengthFactor {
  const least = (known * latitudeWeight(DARKEST_LATITUDE)) / latitudeWeight();
  return { ...sun(known), blank: { field: "latitude", best: sun(least).value } };
}

function ageFactors({ condition, what, at }: Textile): StrengthFactor[] {
  const { ageYears } = condition;
  if (ageYears !== undefined) return ageYears > 0 ? [ageFactor(ageYears)] : [];
  const possible = possibleYears(condition);
  const why = noteFact("why.age", { what: { brought: what }, years: { ratio: possible } });
  return [standIn(ageFactor(possible), { field: `${at}.age`, best: 1 }, why)];
}

function wetFactors({ condition, fibre, what, at }: Textile): StrengthFactor[] {
  if (condition.wet === false) return [];
  if (condition.wet === true) return [wetFactor(fibre)];
  const why = noteFact("why.wet", { what: { brought: what } });
  return [standIn(wetFactor(fibre), { field: `${at}.wet`, best: 1 }, why)];
}

/**
 * A factor that falls with the months outside, such as that of stitching; `at` is the path of the condition. If the months are
 * blank, the worst of all possible months counts.
 */
export function overMonthsOutside(
  factor: (months: number) => StrengthFactor,
  { condition, what, at }: Pick<Textile, "condition" | "what" | "at">,
): StrengthFactor {
  if (condition.monthsOutside !== undefined) return factor(condition.monthsOutside);
  const months = possibleMonths(condition);
  const why = noteFact("why.outside", { what: { brought: what }, months: { months } });
  return standIn(worstUpTo(factor, months), { field: `${at}.outside`, best: factor(0).value }, why);
}
