/** The tests of a stock as its regression sees them: by state and batch, and these by the coefficients that they are a sum of. */
import { isBelow } from "./bounded.ts";
import type { StockState } from "./stockModel.ts";

/** The tests of a state: logarithms over what the built-in factors leave of the rated strength. */
export interface ToldState {
  readonly state: StockState;
  /** Coefficients of the regression that it is a sum of. */
  readonly of: readonly number[];
  /** What the built-in factors leave open of it, as variance [-]. */
  readonly common: number;
  /** Breaking loads, as they were. */
  readonly exact: readonly number[];
  readonly bounds: StockState["tests"];
  /** Variance with which one test is weighed, and the one that was found [-]. */
  readonly assumed: number;
  readonly found: number;
  /** ln of what the built-in factors leave [N]. */
  readonly offset: number;
}

/** With the mean of its breaking loads as far as they are believed. */
export interface BelievedState extends ToldState {
  readonly believed: number;
}

/** States that are the same sum of coefficients: to the regression they are one row. */
export interface ToldGroup {
  readonly of: readonly number[];
  readonly told: readonly BelievedState[];
  /** 1 ÷ variance, summed over its breaking loads and over its bounds [-]. */
  readonly exactPrecision: number;
  readonly boundPrecision: number;
  /** Breaking loads as far as they are believed, each over its variance, summed. */
  readonly exactSum: number;
}

export function groupsOf(told: readonly BelievedState[]): ToldGroup[] {
  const byRow = new Map<string, BelievedState[]>();
  for (const one of told) {
    const key = one.of.join();
    const group = byRow.get(key);
    if (group === undefined) byRow.set(key, [one]);
    else group.push(one);
  }
  return [...byRow.values()].map((group) => {
    let [exactPrecision, boundPrecision, exactSum] = [0, 0, 0];
    for (const { exact, bounds, assumed, believed } of group) {
      exactPrecision += exact.length / assumed;
      boundPrecision += bounds.length / assumed;
      exactSum += (exact.length * believed) / assumed;
    }
    return { of: group[0]!.of, told: group, exactPrecision, boundPrecision, exactSum };
  });
}

/** The same without pieces of which only a load is known below which they broke. */
export const withoutBelow = (told: readonly BelievedState[]): BelievedState[] =>
  told.flatMap((one) => {
    const bounds = one.bounds.filter((test) => !isBelow(test));
    return one.exact.length + bounds.length === 0 ? [] : [{ ...one, bounds }];
  });

/**
 * The same with intervals as survivors of their lower end. What a piece held at least counts for the spread: the more it held, the more is
 * known. A lower load below which it broke would make the spread narrower and a strength higher, so it does not count.
 */
export const asSurvivors = (told: readonly BelievedState[]): BelievedState[] =>
  told.map((one) => ({
    ...one,
    bounds: one.bounds.map((test) =>
      test.result.kind === "between" ? { ...test, result: { kind: "above", value: test.result.from } } : test,
    ),
  }));

export const hasBounds = ({ boundPrecision }: ToldGroup): boolean => boundPrecision > 0;
