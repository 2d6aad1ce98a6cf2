/**
 * A condition whose record begins late. The rig's file gives the state of the day on which the record begins, and the record's
 * counts come on top. A blank in the file stays unknown.
 */
import type { Condition } from "@secondline/rig";
import { conditionSunMonths } from "../derating/sun.ts";
import type { RecordReach } from "./reach.ts";

export interface RecordedState {
  readonly monthsOutside: number;
  /** Months of full sun in an average month [-]. */
  readonly sunMonths: number;
  readonly ageYears?: number;
  readonly wet?: boolean;
  readonly reach: RecordReach;
}

export function addedCondition(written: Condition, recorded: RecordedState): Condition {
  const monthsOutside = added(written.monthsOutside, recorded.monthsOutside);
  const sunMonths = added(conditionSunMonths(written), recorded.sunMonths);
  const ageYears = olderOf(added(written.ageYears, recorded.reach.months / 12), recorded.ageYears);
  const wet = written.wet === true || (recorded.wet ?? written.wet);
  return {
    ...(monthsOutside === undefined ? {} : { monthsOutside }),
    ...(sunMonths === undefined ? {} : { sunMonths }),
    ...(ageYears === undefined ? {} : { ageYears }),
    ...(wet === undefined ? {} : { wet }),
  };
}

/** A blank stays blank. */
export function added(written: number | undefined, recorded: number): number | undefined {
  return written === undefined ? undefined : written + recorded;
}

function olderOf(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? (a ?? b) : Math.max(a, b);
}
