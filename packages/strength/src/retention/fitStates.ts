/**
 * The regression of a stock's tests: means and covariance of its coefficients. Bounds are replaced by the value to be expected
 * beyond them, over and over until nothing moves (EM). See STATISTICS.md, "Own tests of a stock".
 */

import type { LineStock } from "@secondline/rig";
import { type Coefficient, type RegressionRow, regressionCovariance, regressionSolver } from "@secondline/statistics";
import { beyondBound } from "./bounded.ts";
import {
  asSurvivors,
  type BelievedState,
  groupsOf,
  hasBounds,
  type StateTests,
  type TestGroup,
  withoutBelow,
} from "./stateTests.ts";
import type { StockModel, StockState } from "./stockModel.ts";
import { BAND_DEVIATIONS, NEW_SCATTER } from "./stockScatter.ts";
import { builtInAt, builtInLog, type WearDose, type WearId } from "./wearFactors.ts";

/** A wear is believed to be better than built in by at most this many standard deviations of its prior [-]. */
const MOST_BETTER_DEVIATIONS = 2;
/** Most rounds in which bounds are replaced by the value to be expected beyond them [-]. */
const MOST_ROUNDS = 30;
/** Smaller changes of a logarithm are rounding [-]. */
const LEAST_CHANGE = 1e-13;
/** A bound with less than this share of a breaking load's information does not count [-]. */
const LEAST_BOUND_INFORMATION = 0.02;

export interface StatesFit {
  readonly found: Pick<StockModel, "means" | "covariance" | "shortfalls" | "clipped" | "tested">;
  readonly groups: GroupsOfTests;
}

/** Groups of like tests: of all tests, and of all but those known only to have broken below a load. */
export interface GroupsOfTests {
  readonly all: readonly TestGroup[];
  readonly withoutBelow: readonly TestGroup[];
}

/** Priors of the coefficients: as wide as all tests ask for, and as wide as all tests but "broke below" ask for. */
export interface Priors {
  readonly all: readonly Coefficient[];
  readonly withoutBelow: readonly Coefficient[];
}

export function fitStates(stock: LineStock, stateTests: readonly StateTests[], priors: Priors): StatesFit {
  const { believed, clipped } = believedStates(stateTests);
  const groups = { all: groupsOf(believed), withoutBelow: groupsOf(withoutBelow(believed)) };
  const means = settledMeans(groups.all, priors.all);
  const { tested, shortfalls, level } = heldAgainst(stock, believed, means);
  // A piece that broke below a load does not change the spread. Else a lower such load would narrow the spread and raise a
  // strength.
  const held = groupsOf(asSurvivors(withoutBelow(believed)));
  const { beforeLast } = settledMeans(held, priors.withoutBelow);
  const covariance = regressionCovariance(priors.withoutBelow, informedRows(held, beforeLast));
  // If new pieces contradict the rated strength to the low side, their mean is the level, whatever else was tested.
  if (level !== undefined) means.last[0] = Math.min(means.last[0]!, level);
  return { found: { means: means.last, covariance, shortfalls, clipped, tested }, groups };
}

/** Limits by how much worn samples are believed to hold more than new ones. */
function believedStates(stateTests: readonly StateTests[]) {
  const isNew = ({ state }: StateTests) => state.doses.length === 0;
  const raised = Math.max(0, average(stateTests.filter(isNew).flatMap(({ exact }) => exact)));
  const clipped = new Set<StockState>();
  const believed = stateTests.map((one): BelievedState => {
    const most = isNew(one) ? Number.POSITIVE_INFINITY : raised + MOST_BETTER_DEVIATIONS * Math.sqrt(one.common);
    if (average(one.exact) > most) clipped.add(one.state);
    return { ...one, believed: average(one.exact.map((value) => Math.min(value, most))) };
  });
  return { believed, clipped };
}

interface SettledMeans {
  readonly last: Float64Array;
  /** The means of the round before: from these the values beyond the bounds are expected. */
  readonly beforeLast: Float64Array;
}

function settledMeans(groups: readonly TestGroup[], coefficients: readonly Coefficient[]): SettledMeans {
  const exact = groups.filter(({ exactPrecision }) => exactPrecision > 0);
  const exactRows = exact.map(({ of, exactPrecision }) => ({ of, assumed: 1 / exactPrecision, found: 0 }));
  const first = regressionSolver(coefficients, exactRows)(exact.map((one) => one.exactSum / one.exactPrecision));
  if (!groups.some(hasBounds)) return { last: first, beforeLast: first };
  const precisions = groups.map((one) => one.exactPrecision + one.boundPrecision);
  const solve = regressionSolver(
    coefficients,
    groups.map(({ of }, g) => ({ of, assumed: 1 / precisions[g]!, found: 0 })),
  );
  let [last, beforeLast, most] = [first, first, Number.POSITIVE_INFINITY];
  for (let round = 0; round < MOST_ROUNDS && most > LEAST_CHANGE; round++) {
    beforeLast = last;
    last = solve(groups.map((group, g) => (group.exactSum + beyondSum(group, beforeLast)) / precisions[g]!));
    most = last.reduce((largest, mean, k) => Math.max(largest, Math.abs(mean - beforeLast[k]!)), 0);
  }
  return { last, beforeLast };
}

const centreOf = ({ of }: Pick<StateTests, "of">, means: Float64Array) => of.reduce((sum, i) => sum + means[i]!, 0);

/** Sum of the values to be expected beyond the bounds of a group, each over its variance. */
function beyondSum(group: TestGroup, means: Float64Array): number {
  if (!hasBounds(group)) return 0;
  const centre = centreOf(group, means);
  return group.members.reduce((total, { bounds, assumed, offset }) => {
    const deviation = Math.sqrt(assumed);
    const sum = bounds.reduce((all, test) => all + beyondBound(test, centre, deviation, offset).mean, 0);
    return total + sum / assumed;
  }, 0);
}

/** Rows of the regression in which a bound counts with its information, as a share of a breaking load's. */
function informedRows(groups: readonly TestGroup[], means: Float64Array): Omit<RegressionRow, "y">[] {
  return groups.flatMap((group) => {
    const centre = centreOf(group, means);
    let [precision, weighed] = [0, 0];
    for (const { exact, bounds, assumed, found, offset } of group.members) {
      const deviation = Math.sqrt(assumed);
      const informed = bounds.reduce((sum, test) => {
        const { kept } = beyondBound(test, centre, deviation, offset);
        return sum + (kept < LEAST_BOUND_INFORMATION ? 0 : kept);
      }, exact.length);
      precision += informed / assumed;
      weighed += (informed * found) / (assumed * assumed);
    }
    return precision === 0 ? [] : [{ of: group.of, assumed: 1 / precision, found: weighed / precision ** 2 }];
  });
}

/**
 * Finds states whose tests hold less than the fitted sum: the shortfall of a wear, and the level if new pieces contradict the
 * rating.
 */
function heldAgainst(stock: LineStock, stateTests: readonly BelievedState[], { last }: SettledMeans) {
  const shortfalls: { id: WearId; dose: number; by: number }[] = [];
  const tested = new Map<StockState, number>();
  let [newSum, newTests, governed] = [0, 0, false];
  for (const one of stateTests) {
    const { state, exact, bounds, assumed, common, offset } = one;
    const fitted = centreOf(one, last);
    const limits = bounds.map((test) => beyondBound(test, fitted, Math.sqrt(assumed), offset).mean);
    const mean = average([...exact, ...limits]);
    tested.set(state, mean + builtInLog(stock, state.doses));
    const count = exact.length + bounds.length;
    // Inside the model's band a mean may lie low by chance. Below the band it governs as it is.
    const outside = mean < -BAND_DEVIATIONS * Math.sqrt(common + NEW_SCATTER ** 2 + assumed / count);
    const by = fitted - mean - (outside ? 0 : Math.sqrt(assumed / count));
    const widest = widestWear(stock, state.doses);
    if (exact.length > 0 && widest !== undefined && by > 0) shortfalls.push({ ...widest, by });
    if (widest === undefined) {
      newSum += mean * count;
      newTests += count;
      governed ||= exact.length > 0 && by > 0 && outside;
    }
  }
  return { tested, shortfalls, level: governed ? newSum / newTests : undefined };
}

/** The wear whose built-in factor has the widest spread. */
function widestWear(stock: LineStock, doses: readonly WearDose[]): WearDose | undefined {
  const common = (wear: WearDose) => builtInAt(stock, wear).common;
  return [...doses].sort((a, b) => common(b) - common(a))[0];
}

const average = (values: readonly number[]) =>
  values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length;
