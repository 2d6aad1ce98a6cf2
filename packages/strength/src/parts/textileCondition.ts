/** Factors of a textile part's condition: sun, age, wet. What is left blank counts as the worst that it can be. */
import { type Condition, type Fibre, formatMonths, formatRatio } from "@secondline/rig";
import { ageFactor } from "../derating/age.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { conditionSunMonths, sunFactor } from "../derating/sun.ts";
import { possibleMonths, possibleSun, possibleYears, standIn, worstUpTo } from "../derating/unknown.ts";
import { wetFactor } from "../derating/wet.ts";

export interface Textile {
  readonly condition: Condition;
  readonly fibre: Fibre;
  /** The part in words, such as "the leash". */
  readonly what: string;
  /** Path of its condition in the rig document. */
  readonly at: string;
  /** Stands in for the built-in curve where there are tests. */
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
    const shareKnown = condition.sunMonths !== undefined || condition.sun !== undefined;
    return [shareKnown ? sun(known) : { ...sun(known), blank: { field: `${at}.sun`, best: 1 } }];
  }
  const possible = possibleSun(condition);
  if (possible <= 0) return [];
  const why = `how long ${what} was outside is not written down; it can be ${formatMonths(possibleMonths(condition))}, and so much sun is counted`;
  return [standIn(worstUpTo(sun, possible), { field: `${at}.outside`, best: 1 }, why)];
}

function ageFactors({ condition, what, at }: Textile): StrengthFactor[] {
  const { ageYears } = condition;
  if (ageYears !== undefined) return ageYears > 0 ? [ageFactor(ageYears)] : [];
  const possible = possibleYears(condition);
  const why = `the age of ${what} is not written down; ${formatRatio(possible)} years are counted`;
  return [standIn(ageFactor(possible), { field: `${at}.age`, best: 1 }, why)];
}

function wetFactors({ condition, fibre, what, at }: Textile): StrengthFactor[] {
  if (condition.wet === false) return [];
  if (condition.wet === true) return [wetFactor(fibre)];
  const why = `whether ${what} is wet when loaded is not written down; it counts as wet`;
  return [standIn(wetFactor(fibre), { field: `${at}.wet`, best: 1 }, why)];
}

/**
 * A factor that grows with the months outside, such as that of stitching; `at` is the path of the condition. Where the months are not
 * written down it stands in for all that are possible.
 */
export function overMonthsOutside(
  factor: (months: number) => StrengthFactor,
  { condition, what, at }: Pick<Textile, "condition" | "what" | "at">,
): StrengthFactor {
  if (condition.monthsOutside !== undefined) return factor(condition.monthsOutside);
  const months = possibleMonths(condition);
  const why = `how long ${what} was outside is not written down; ${formatMonths(months)} are counted`;
  return standIn(worstUpTo(factor, months), { field: `${at}.outside`, best: factor(0).value }, why);
}
