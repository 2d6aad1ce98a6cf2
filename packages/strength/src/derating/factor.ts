/**
 * A factor on strength: its cause, value, spread, range and source. Strength = rated × product of factors, each lognormal about
 * its central value (the median).
 */
import type { Basis } from "@secondline/rig";
import { type NoteFact, noteFact, within } from "../noteFacts.ts";
import { constant } from "./constantValues.ts";

/** The quantity a factor depends on, and the range over which its source (or its assumption) covers it. */
export interface Validity {
  readonly quantity: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly got: number;
}

export interface StrengthFactor {
  readonly name: string;
  /** Central value (median) [-]. */
  readonly value: number;
  /** Coefficient of variation [-]. */
  readonly spread: number;
  readonly basis: Basis;
  /** Cause of the factor. Factors with the same cause err together. */
  readonly cause: string;
  /** Correlation between the logarithms of two factors of the same cause, 0 to 1 [-]. */
  readonly shared: number;
  readonly validity?: Validity;
  /** True when the quantity lies outside the range of validity: value and spread are then the cautious ones. */
  readonly beyond: boolean;
  /** True when the quantity was left blank and the worst possible value stands in. */
  readonly noData: boolean;
  /**
   * True when a reader must be told of the factor wherever the strength is shown: an own judgement, or a factor that raises the
   * strength.
   */
  readonly flagged?: boolean;
  /** The field of the rig document that was left blank and for which this factor stands in. */
  readonly blank?: Blank;
  /** For a factor learnt from own tests: how it errs together with the other factors that the same tests know. */
  readonly learnt?: Learnt;
}

/** A blank of the rig document. */
export interface Blank {
  /** Path of the field, such as "leash.condition.outside". */
  readonly field: string;
  /** Value of the factor if the best possible were written down there [-]. */
  readonly best: number;
}

/** Deviation of a factor's logarithm: `loadings` on standard normal deviates that all factors of `source` share, and the rest. */
export interface Learnt {
  readonly source: string;
  readonly loadings: readonly number[];
  /** Standard deviation of the logarithm that is the factor's own [-]. */
  readonly own: number;
  /**
   * Variance that the factor adds to that of the others of its source, in place of its own; below 0 if the product is known
   * better [-].
   */
  readonly adds?: number;
}

/** Beyond a range nothing is known. Then at most this share of the value at the edge counts, with at least this spread [-]. */
export const BEYOND_RANGE_SHARE = constant("beyond.share");
export const BEYOND_RANGE_SPREAD = constant("beyond.spread");
/** Smallest value of a factor. It stands for a part that carries nothing, whose strength must still have a logarithm [-]. */
export const LEAST_FACTOR = 1e-6;

export interface FactorMake {
  readonly name: string;
  readonly cause?: string;
  readonly shared?: number;
  readonly basis: Basis;
  readonly validity: Validity;
  /** Central value, which beyond the range may come down to 0 and below it, and spread. */
  readonly at: (quantity: number) => { readonly value: number; readonly spread: number };
}

/**
 * Evaluates a factor. Outside its range it is not trusted: half of the value at the edge counts, or the continued curve where
 * that is less. The spread is widened, and `beyond` is set. Not-finite or negative quantities are a programmer's error.
 */
export function evaluateFactor(make: FactorMake): StrengthFactor {
  const { validity } = make;
  if (!Number.isFinite(validity.got))
    throw new Error(`${make.name}: ${validity.quantity} must be a number, got ${validity.got}`);
  const inside = Math.min(validity.to, Math.max(validity.from, validity.got));
  const beyond = inside !== validity.got;
  const { value, spread } = make.at(inside);
  const counted = beyond ? Math.min(value * BEYOND_RANGE_SHARE, make.at(validity.got).value) : value;
  return {
    name: make.name,
    value: Math.max(LEAST_FACTOR, counted),
    spread: beyond ? Math.max(spread, BEYOND_RANGE_SPREAD) : spread,
    basis: beyond ? beyondBasis(make.basis, validity) : make.basis,
    cause: make.cause ?? make.name,
    shared: make.shared ?? 0,
    validity,
    beyond,
    noData: false,
  };
}

/** A quantity that lies outside of its range, with the range. */
export function outsideFact({ quantity, unit, from, to, got }: Validity): NoteFact {
  const values = { got: Number(got.toPrecision(4)), from, to };
  if (unit === "") return noteFact("outside.quantity", { ...values, quantity: { brought: quantity } });
  if (unit === quantity) return noteFact("outside.unit", { ...values, unit: { brought: unit } });
  return noteFact("outside.quantityUnit", { ...values, quantity: { brought: quantity }, unit: { brought: unit } });
}

function beyondBasis(basis: Basis, validity: Validity): Basis {
  return {
    kind: "assumed",
    note: noteFact("basis.beyond", { outside: outsideFact(validity), note: within(basis.note) }),
  };
}

/** A factor that depends on no quantity. */
export function fixedFactor(
  given: Pick<StrengthFactor, "name" | "value" | "spread" | "basis"> & Partial<StrengthFactor>,
): StrengthFactor {
  return { cause: given.name, shared: 0, beyond: false, noData: false, ...given };
}
