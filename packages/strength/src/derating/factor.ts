/**
 * A factor on strength: what takes strength away, by how much, how sure that is, over which range it is known and from
 * where. Strength = rated × product of factors, each lognormal about its central value (the median).
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
  /** What causes it. Factors with the same cause err together. */
  readonly cause: string;
  /** Correlation between the logarithms of two factors of the same cause, 0 to 1 [-]. */
  readonly shared: number;
  readonly validity?: Validity;
  /** True when the quantity lies outside the range of validity: value and spread are then the cautious ones. */
  readonly beyond: boolean;
  /** True when nobody wrote down what it depends on and the worst that is possible stands in. */
  readonly noData: boolean;
  /** True when a reader must be told of it wherever the strength is shown: somebody's own judgement, or one that raises it. */
  readonly flagged?: boolean;
  /** The field of the rig document that was left blank and for which this factor stands in. */
  readonly blank?: Blank;
  /** Where own tests know it: how it errs together with the other factors that the same tests know. */
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
  /** Variance that it adds to the others' of its source in place of its own: less than 0 where the whole is known better [-]. */
  readonly adds?: number;
}

/** Beyond its range nothing is known: half of the value at the edge counts at most, with this spread at least [-]. */
export const BEYOND_RANGE_SHARE = constant("beyond.share");
export const BEYOND_RANGE_SPREAD = constant("beyond.spread");
/** Stands for nothing: a part of which so little is left carries nothing, and its strength still has a logarithm [-]. */
export const NOTHING_LEFT = 1e-6;

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
 * Evaluates a factor. Outside its range it is not trusted: half of the value at the edge counts, or the curve drawn on where that
 * is less, the spread is widened, and `beyond` says so. Not-finite or negative quantities are a programmer's error.
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
    value: Math.max(NOTHING_LEFT, counted),
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
  const told = { got: Number(got.toPrecision(4)), from, to };
  if (unit === "") return noteFact("outside.quantity", { ...told, quantity: { brought: quantity } });
  if (unit === quantity) return noteFact("outside.unit", { ...told, unit: { brought: unit } });
  return noteFact("outside.quantityUnit", { ...told, quantity: { brought: quantity }, unit: { brought: unit } });
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
