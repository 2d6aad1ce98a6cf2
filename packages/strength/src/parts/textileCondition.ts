/** Factors of a textile part's condition: sun, age, wet, or the cautious one when nothing is known. */
import type { Condition, Fibre } from "@secondline/rig";
import { ageFactor } from "../derating/age.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { noRecord } from "../derating/make.ts";
import { conditionSunMonths, sunFactor } from "../derating/sun.ts";
import { wetFactor } from "../derating/wet.ts";

/**
 * Factors of `condition` on `what`, made of `fibre`. Leaves out factors that take nothing away. `sun`
 * stands in for the published factor where there are tests.
 */
export function conditionFactors(
  condition: Condition,
  fibre: Fibre,
  what: string,
  sun: (months: number) => StrengthFactor = (months) => sunFactor(fibre, months),
): StrengthFactor[] {
  const factors: StrengthFactor[] = [];
  const sunMonths = conditionSunMonths(condition);
  if (sunMonths === undefined) factors.push(noRecord(what));
  else if (sunMonths > 0) factors.push(sun(sunMonths));
  if (condition.ageYears !== undefined && condition.ageYears > 0) factors.push(ageFactor(condition.ageYears));
  if (condition.wet === true) factors.push(wetFactor(fibre));
  return factors;
}
