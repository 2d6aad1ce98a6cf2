/**
 * A blank counts as the worst possible value, never as better than any value that could be written there. A part without a date
 * can be as old as `unknown.age`, and can have hung outside all the while; a number without a date counts as the worst that the
 * rig document accepts.
 */
import type { Condition, Note } from "@secondline/rig";
import { noteFact, within } from "../noteFacts.ts";
import { constant } from "./constantValues.ts";
import type { Blank, StrengthFactor } from "./factor.ts";
import { mostDose } from "./sunDose.ts";

/** Longest time that a part can have been outside: the written one, or its whole life [months]. */
export function possibleMonths({ monthsOutside, ageYears }: Condition): number {
  return monthsOutside ?? 12 * (ageYears ?? constant("unknown.age"));
}

/** Oldest that a part can be: the written age, else the age of an undated part, and no less than its time outside [years]. */
export function possibleYears({ monthsOutside, ageYears }: Condition): number {
  return ageYears ?? Math.max(constant("unknown.age"), (monthsOutside ?? 0) / 12);
}

/**
 * Most sun that a part can have taken of which nobody says how long it was outside [months of full sun]. Whoever does not know how long
 * does not know where either: the latitude of the rig does not count.
 */
export function possibleSun(condition: Condition): number {
  return (condition.sun ?? 1) * mostDose(possibleMonths(condition), possibleYears(condition));
}

/** Steps of dose in which a factor's worst value is looked for: by tests a middle dose can be worse than a large one [-]. */
const DOSE_STEPS = 12;

/** The worst factor over every quantity up to a bound: the least value with the largest spread. */
export function worstUpTo(factor: (quantity: number) => StrengthFactor, bound: number): StrengthFactor {
  const edge = factor(bound).validity?.to ?? bound;
  const inside = Math.min(bound, edge);
  const tried = [bound, ...Array.from({ length: DOSE_STEPS }, (_, i) => (inside * i) / DOSE_STEPS), inside].map(factor);
  const worst = tried.reduce((least, one) => (one.value < least.value ? one : least));
  return { ...worst, spread: Math.max(...tried.map(({ spread }) => spread)) };
}

/** The factor for a blank: it names the field, and is marked as cautious if the blank costs strength. */
export function standIn(factor: StrengthFactor, { field, best }: Blank, why: Note): StrengthFactor {
  const basis = {
    kind: "assumed",
    note: noteFact("basis.standIn", { why: within(why), note: within(factor.basis.note) }),
  } as const;
  return { ...factor, basis, noData: factor.value < best, blank: { field, best } };
}
