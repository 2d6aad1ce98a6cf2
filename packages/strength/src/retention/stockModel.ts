/**
 * The model of one stock by own tests: ln strength = ln rated + level + batch + loss by every wear + scatter. The built-in
 * factors and their spreads are the priors, each on its own; see STATISTICS.md, "Own tests of a stock".
 */

import type { LineStock } from "@secondline/rig";
import type { Coefficient } from "@secondline/statistics";
import { grouped } from "../breakLog/grouped.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { batchKey } from "../breakLog/testGroup.ts";
import { textileMake } from "../derating/make.ts";
import { isBelow } from "./bounded.ts";
import { fitStates, type Priors } from "./fitStates.ts";
import { type MostRaise, mostRaise } from "./mostRaise.ts";
import { type OneSided, oneSided } from "./oneSided.ts";
import type { StateTests } from "./stateTests.ts";
import {
  BATCH_SCATTER,
  betweenBatches,
  exactLogs,
  NEW_SCATTER,
  type Within,
  widened,
  withinScatter,
} from "./stockScatter.ts";
import { testsOfStock } from "./testState.ts";
import {
  builtInAt,
  builtInLog,
  builtInSpread,
  builtInVariance,
  nearestDose,
  type WearDose,
  type WearId,
} from "./wearFactors.ts";
import { type WetLimit, wetLimits } from "./wetTests.ts";

/** Standard deviation of the level about the rated strength: if new pieces were pulled, and if none was [-]. */
const LEVEL_SPREAD_TESTED = 0.25;
const LEVEL_SPREAD_UNTESTED = 0.05;
/**
 * If the tests tell a wear apart from others, the variance of its prior is this many times as wide. The tests are worth more
 * than the assumption, and one bad assumption does not pull at the other factors [-].
 */
const TESTED_VARIANCE_RATIO = 4;
/** Most doses of one wear that are told apart [-]. */
const MOST_DOSES = 12;

/** Tests of one state and batch. */
export interface StockState {
  readonly doses: readonly WearDose[];
  readonly batch: string;
  readonly tests: readonly BreakTest[];
}

/** A wear at the doses at which it was tested. */
export interface WearKnots {
  readonly id: WearId;
  /** Ascending. */
  readonly doses: readonly number[];
  /** Variance of the prior at each dose; ascending [-]. */
  readonly variances: readonly number[];
  /** Index of the coefficient of each step from the last dose to this one. */
  readonly steps: readonly number[];
  /** Scatter from sample to sample over the built-in one, as a variance ratio [-]. */
  readonly scatter: number;
  /** Factor that widens the deviation of that scatter for few samples [-]. */
  readonly wide: number;
  readonly testCount: number;
  /** Every test with this wear is known only to have broken below a load. */
  readonly onlyBelow: boolean;
}

export interface StockModel {
  readonly stock: LineStock;
  readonly states: readonly StockState[];
  /** Coefficient 0 is the level. */
  readonly means: Float64Array;
  readonly covariance: readonly Float64Array[];
  readonly wears: ReadonlyMap<WearId, WearKnots>;
  /** Number of new pieces of which more is known than a load below which they broke [-]. */
  readonly newTests: number;
  /** Standard deviations of the logarithm: of new pieces within a batch, and between batches [-]. */
  readonly scatter: number;
  readonly batchScatter: number;
  /** Degrees of freedom of `scatter` [-]. */
  readonly freedom: number;
  /** Shortfalls of tests below the fitted sum: taken off the logarithm of a wear from a dose on [-]. */
  readonly shortfalls: readonly { readonly id: WearId; readonly dose: number; readonly by: number }[];
  /** States whose tests hold more than can be believed; the tests count only up to the believed value. */
  readonly clipped: ReadonlySet<StockState>;
  /** Mean of the logarithm of the strength of a state over the rated one: tested, and as built in [-]. */
  readonly tested: ReadonlyMap<StockState, number>;
  /** Most credit of the tests above rating and built-in factors. */
  readonly raise: MostRaise;
  /** Limits from tests that were pulled wet. */
  readonly wet: readonly WetLimit[];
  /** The tests in the form in which a lower one never raises a strength; if there are two forms, the lower result counts. */
  readonly oneSided: readonly OneSided[];
}

/** Undefined when no test of the log counts for the stock. */
export function stockModel(stock: LineStock, tests: readonly BreakTest[]): StockModel | undefined {
  const states = statesOf(stock, tests);
  if (states.length === 0) return undefined;
  const batches = [...new Set(states.map(({ batch }) => batch))];
  const within = withinScatter(stock, states);
  const batchVariance = betweenBatches(stock, states, within.variance);
  const ofBatches = batches.map((): Coefficient => ({ assumed: BATCH_SCATTER ** 2, found: batchVariance }));
  const wears = wearKnots(stock, states, 1 + batches.length, within);
  const telling = states.filter(({ tests: ofState }) => !ofState.every(isBelow));
  const priors: Priors = {
    all: [levelPrior(states), ...ofBatches, ...wearPriors(wears, states)],
    withoutBelow: [
      // If no test of the stock tells a load that it held, the level errs as built in.
      telling.length === 0 ? fixedVariance(builtInVariance(textileMake(stock.id)).common) : levelPrior(telling),
      ...ofBatches,
      ...wearPriors(wears, telling),
    ],
  };
  const coefficientsOf = ({ doses, batch }: StockState) => [
    0,
    1 + batches.indexOf(batch),
    ...doses.flatMap((wear) => stepsTo(wears.get(wear.id)!, wear.dose)),
  ];
  const stateTests = states.map((state): StateTests => {
    const { common, own } = builtInSpread(stock, state.doses);
    const found = state.doses.reduce((sum, wear) => {
      return sum + wears.get(wear.id)!.scatter * builtInAt(stock, wear).own;
    }, within.variance);
    const offset = Math.log(stock.rated.strength) + builtInLog(stock, state.doses);
    const exact = exactLogs(state).map((log) => log - offset);
    const bounds = state.tests.filter(({ result }) => result.kind !== "exact");
    const assumed = NEW_SCATTER ** 2 + own;
    return { state, of: coefficientsOf(state), common, exact, bounds, assumed, found, offset };
  });
  const { found, groups } = fitStates(stock, stateTests, priors);
  const allowance = { scatter: NEW_SCATTER ** 2, batch: BATCH_SCATTER ** 2 };
  const without = oneSided(groups.withoutBelow, priors.withoutBelow, wears, allowance);
  return {
    stock,
    states,
    newTests: countOf(telling.filter(isNew).map(({ tests: ofState }) => ofState.filter((test) => !isBelow(test)))),
    wears,
    scatter: Math.sqrt(within.variance),
    batchScatter: Math.sqrt(batchVariance),
    freedom: within.freedom,
    ...found,
    raise: mostRaise(stateTests),
    wet: wetLimits(stock, tests),
    // Pieces that broke below a load may lower the result of all others, never raise it.
    oneSided: states.some(({ tests: ofState }) => ofState.some(isBelow))
      ? [without, oneSided(groups.all, priors.all, wears, allowance)]
      : [without],
  };
}

const fixedVariance = (variance: number): Coefficient => ({ assumed: variance, found: variance });
const isNew = ({ doses }: StockState) => doses.length === 0;
const countOf = (lists: readonly (readonly unknown[])[]) => lists.reduce((sum, list) => sum + list.length, 0);
const levelPrior = (states: readonly StockState[]) =>
  fixedVariance((states.some(isNew) ? LEVEL_SPREAD_TESTED : LEVEL_SPREAD_UNTESTED) ** 2);

function statesOf(stock: LineStock, tests: readonly BreakTest[]): StockState[] {
  const used = testsOfStock(tests, stock).flatMap(({ use, tests: alike }) => {
    if (typeof use === "string") return [];
    const key = use.map(({ id, dose }) => `${id} ${Number(dose.toPrecision(4))}`).join();
    return alike.map((test) => ({ test, doses: use, key }));
  });
  return [...grouped(used, ({ key, test }) => `${key} in ${batchKey(test)}`).values()].map((group) => ({
    doses: group[0]!.doses,
    batch: batchKey(group[0]!.test),
    tests: group.map(({ test }) => test),
  }));
}

/** The doses at which each wear was tested, and a coefficient for each step between them, from `first` on. */
function wearKnots(
  stock: LineStock,
  states: readonly StockState[],
  first: number,
  within: Within,
): Map<WearId, WearKnots> {
  const ids = [...new Set(states.flatMap(({ doses }) => doses.map(({ id }) => id)))];
  let next = first;
  return new Map(
    ids.map((id) => {
      const carrying = states.filter((state) => carries(state, id));
      const doses = fewDoses(
        carrying.flatMap((state) => state.doses.filter((wear) => wear.id === id).map((w) => w.dose)),
      );
      let last = 0;
      const variances = doses.map((dose) => {
        last = Math.max(last, builtInAt(stock, { id, dose }).common);
        return last;
      });
      const steps = variances.map(() => next++);
      const { ratio, freedom } = within.ofWear.get(id)!;
      const onlyBelow = carrying.every(({ tests }) => tests.every(isBelow));
      const wide = onlyBelow ? 1 : widened(freedom);
      const testCount = countOf(carrying.map(({ tests }) => tests));
      return [id, { id, doses, variances, steps, scatter: ratio, wide, testCount, onlyBelow }];
    }),
  );
}

const carries = ({ doses }: StockState, id: WearId) => doses.some((wear) => wear.id === id);

/** A prior for each step of each wear, in the order of their coefficients. */
function wearPriors(wears: ReadonlyMap<WearId, WearKnots>, states: readonly StockState[]): Coefficient[] {
  return [...wears.values()].flatMap(({ id, variances }) => {
    const carrying = states.filter((state) => carries(state, id));
    const width = toldApart(id, carrying, states) ? TESTED_VARIANCE_RATIO : 1;
    return variances.map((variance, k) => fixedVariance(Math.max(1e-9, width * (variance - (variances[k - 1] ?? 0)))));
  });
}

/** Whether some samples differ from others, or from new pieces, by this wear alone. */
function toldApart(id: WearId, carrying: readonly StockState[], states: readonly StockState[]): boolean {
  const key = (doses: readonly WearDose[]) => JSON.stringify(doses.map((wear) => wear.id).sort());
  const known = new Set(states.map(({ doses }) => key(doses))).add(key([]));
  return carrying.some(({ doses }) => known.has(key(doses.filter((wear) => wear.id !== id))));
}

/** The different doses, ascending; if there are more than `MOST_DOSES`, that many which lie evenly among the tests. */
function fewDoses(doses: readonly number[]): number[] {
  const different = [...new Set(doses)].sort((a, b) => a - b);
  if (different.length <= MOST_DOSES) return different;
  const places = Array.from({ length: MOST_DOSES }, (_, i) =>
    Math.round((i * (different.length - 1)) / (MOST_DOSES - 1)),
  );
  return [...new Set(places.map((place) => different[place]!))];
}

/** Coefficients whose sum is the effect of a dose: the steps up to the nearest tested dose. */
function stepsTo({ doses, steps }: WearKnots, dose: number): number[] {
  return steps.slice(0, nearestDose(doses, dose) + 1);
}
