/**
 * The tests of a stock as rows of its regression: grouped by state and batch, and these by the coefficients whose sum they are.
 */
import { isBelow } from "./bounded.ts";
import type { StockState } from "./stockModel.ts";

/** The tests of a state: logarithms of the strength over the rated strength times the built-in factors. */
export interface StateTests {
  readonly state: StockState;
  /** Coefficients of the regression whose sum is the state's mean. */
  readonly of: readonly number[];
  /** Variance that the built-in factors leave open [-]. */
  readonly common: number;
  /** Breaking loads, not clipped. */
  readonly exact: readonly number[];
  readonly bounds: StockState["tests"];
  /** Variance that weighs one test, and the variance that was found [-]. */
  readonly assumed: number;
  readonly found: number;
  /** ln of the rated strength times the built-in factors [N]. */
  readonly offset: number;
}

/** A state with the mean of its breaking loads, each clipped to the value that is believed. */
export interface BelievedState extends StateTests {
  readonly believed: number;
}

/** States with the same sum of coefficients: one row of the regression. */
export interface TestGroup {
  readonly of: readonly number[];
  readonly members: readonly BelievedState[];
  /** 1 ÷ variance, summed over its breaking loads and over its bounds [-]. */
  readonly exactPrecision: number;
  readonly boundPrecision: number;
  /** Sum of the believed breaking loads, each over its variance. */
  readonly exactSum: number;
}

export function groupsOf(stateTests: readonly BelievedState[]): TestGroup[] {
  const byRow = new Map<string, BelievedState[]>();
  for (const one of stateTests) {
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
    return { of: group[0]!.of, members: group, exactPrecision, boundPrecision, exactSum };
  });
}

/** The same states without pieces known only to have broken below a load. */
export const withoutBelow = (stateTests: readonly BelievedState[]): BelievedState[] =>
  stateTests.flatMap((one) => {
    const bounds = one.bounds.filter((test) => !isBelow(test));
    return one.exact.length + bounds.length === 0 ? [] : [{ ...one, bounds }];
  });

/**
 * The same states with intervals as survivors of their lower end. The load that a piece held counts for the spread: the more it
 * held, the more is known. A load below which it broke does not count, because a lower such load would narrow the spread and
 * raise a strength.
 */
export const asSurvivors = (stateTests: readonly BelievedState[]): BelievedState[] =>
  stateTests.map((one) => ({
    ...one,
    bounds: one.bounds.map((test) =>
      test.result.kind === "between" ? { ...test, result: { kind: "above", value: test.result.from } } : test,
    ),
  }));

export const hasBounds = ({ boundPrecision }: TestGroup): boolean => boundPrecision > 0;
