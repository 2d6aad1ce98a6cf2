/**
 * The own judgement of a part as a factor. It is shown with its reason wherever the strength is shown; a factor above 1 has a
 * caution of its own.
 */
import type { Basis, OwnJudgement } from "@secondline/rig";
import { noteFact } from "../noteFacts.ts";
import { constant } from "./constantValues.ts";
import { fixedFactor, type StrengthFactor } from "./factor.ts";
import { UNKNOWN_SPREAD, UNKNOWN_VALUE } from "./make.ts";

export const OWN_NAME = "own judgement";
/** The spread of an own factor is a share of its distance from 1, within bounds [-]. */
const SPREAD_PER_CHANGE = constant("own.spreadPerChange");
const LEAST_SPREAD = constant("own.leastSpread");
const MOST_SPREAD = constant("own.mostSpread");

/** A judgement as it counts; `capped`: it raises the strength only up to that of the part itself. */
export interface JudgementCounted extends OwnJudgement {
  readonly capped?: true;
}

/** The factor of a judgement, as a list of one; none when there is no judgement. */
export function ownFactors(own: JudgementCounted | undefined): StrengthFactor[] {
  if (own === undefined) return [];
  const { factor, reason } = own;
  const code = factor === undefined ? "basis.ownNoFactor" : own.capped ? "basis.ownCapped" : "basis.own";
  const basis: Basis = { kind: "assumed", note: noteFact(code, { reason }) };
  if (factor === undefined) {
    return [fixedFactor({ name: OWN_NAME, value: UNKNOWN_VALUE, spread: UNKNOWN_SPREAD, basis, noData: true })];
  }
  const spread = Math.min(MOST_SPREAD, Math.max(LEAST_SPREAD, SPREAD_PER_CHANGE * Math.abs(1 - factor)));
  return [fixedFactor({ name: OWN_NAME, value: factor, spread, basis, flagged: true })];
}
