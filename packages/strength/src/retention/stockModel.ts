/**
 * What own tests say of one stock: ln strength = ln rated + level + batch + what every wear takes + scatter. The built-in
 * factors and their spreads are the priors, each on its own; see STATISTICS.md, "Own tests of a stock".
 */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import { grouped } from "../breakLog/grouped.ts";
import { tQuantile } from "../statistics/studentT.ts";
import { beyondBound } from "./bounded.ts";
import { type OneSided, oneSided } from "./oneSided.ts";
import { isOfStock, wearOfTest } from "./testState.ts";
import { type Coefficient, type RegressionRow, regressionCovariance, regressionSolver } from "./tiedRegression.ts";
import { builtInAt, nearestDose, type WearDose, type WearId } from "./wearFactors.ts";

/**
 * Scatter of new pieces of one batch, as standard deviation of the logarithm; how many degrees of freedom its value is worth
 * beside what the tests show, and how many it adds to Student's t: that webbing scatters by a twentieth is known better than
 * by how much exactly [-].
 */
export const NEW_SCATTER = 0.05;
const SCATTER_WORTH = 1;
const SCATTER_FREEDOM = 4;
/** Standard deviation of the level about the rated strength: where new pieces were pulled, and where none was [-]. */
const LEVEL_TESTED = 0.25;
const LEVEL_UNTESTED = 0.05;
/**
 * Scatter between batches, as standard deviation of the logarithm; how many degrees of freedom its value is worth beside what
 * named batches show, and how many it adds to Student's t [-].
 */
const BATCH_SCATTER = 0.015;
const BATCHES_WORTH = 0.5;
const BATCHES_FREEDOM = 1;
/**
 * Where a wear was tested so that it can be told apart, its prior is so many times as wide, in variance: the tests are worth
 * more than the assumption, and one bad assumption does not pull at the other factors [-].
 */
const TESTED_WIDTH = 4;
/** Doses of one cause that are told apart at most. */
const MOST_DOSES = 12;
/** A wear is believed to be better than built in by so many standard deviations of its prior at most [-]. */
const MOST_BETTER = 2;

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
  /** Scatter from sample to sample over the built-in one, as a variance ratio, and its degrees of freedom [-]. */
  readonly scatter: number;
  readonly freedom: number;
  /** Least and largest number of samples that carry it. */
  readonly testCount: number;
}

export interface StockModel {
  readonly stock: LineStock;
  readonly states: readonly StockState[];
  /** Coefficient 0 is the level. */
  readonly means: Float64Array;
  readonly covariance: readonly Float64Array[];
  readonly wears: ReadonlyMap<WearId, WearKnots>;
  readonly newTests: number;
  /** Standard deviations of the logarithm: of new pieces within a batch, and between batches [-]. */
  readonly scatter: number;
  readonly batchScatter: number;
  /** Degrees of freedom of `scatter` [-]. */
  readonly freedom: number;
  /** Where tests hold less than the fitted sum of what is known: taken off the logarithm of a wear from a dose on [-]. */
  readonly shortfalls: readonly { readonly id: WearId; readonly dose: number; readonly by: number }[];
  /** States whose tests hold more than can be believed: counted only up to there. */
  readonly clipped: ReadonlySet<StockState>;
  /** Mean of the logarithm of the strength of a state over the rated one: tested, and as built in [-]. */
  readonly tested: ReadonlyMap<StockState, number>;
  /** The tests in the form in which a lower one never raises a strength. */
  readonly oneSided: OneSided;
}

/** Undefined when no test of the log counts for the stock. */
export function stockModel(stock: LineStock, tests: readonly BreakTest[]): StockModel | undefined {
  const states = statesOf(stock, tests);
  if (states.length === 0) return undefined;
  const newTests = countOf(states.filter(({ doses }) => doses.length === 0));
  const batches = [...new Set(states.map(({ batch }) => batch))];
  const within = withinScatter(stock, states);
  const batchVariance = betweenBatches(stock, states, within.variance);
  const coefficients: Coefficient[] = [same((newTests > 0 ? LEVEL_TESTED : LEVEL_UNTESTED) ** 2)];
  for (const _ of batches) coefficients.push({ assumed: BATCH_SCATTER ** 2, found: batchVariance });
  const wears = wearKnots(stock, states, coefficients, within);
  const coefficientsOf = ({ doses, batch }: StockState) => [
    0,
    1 + batches.indexOf(batch),
    ...doses.flatMap((wear) => stepsTo(wears.get(wear.id)!, wear.dose)),
  ];
  const fit = fitStates(stock, states, coefficients, coefficientsOf, wears, within.variance);
  return {
    stock,
    states,
    newTests,
    wears,
    scatter: Math.sqrt(within.variance),
    batchScatter: Math.sqrt(batchVariance),
    freedom: within.freedom,
    ...fit,
  };
}

const same = (variance: number): Coefficient => ({ assumed: variance, found: variance });
const countOf = (states: readonly StockState[]) => states.reduce((sum, { tests }) => sum + tests.length, 0);

function statesOf(stock: LineStock, tests: readonly BreakTest[]): StockState[] {
  const used = tests.flatMap((test) => {
    if (!isOfStock(test, stock)) return [];
    const doses = wearOfTest(test, stock);
    return typeof doses === "string" ? [] : [{ test, doses }];
  });
  const key = ({ test, doses }: (typeof used)[number]) =>
    `${doses.map(({ id, dose }) => `${id} ${Number(dose.toPrecision(4))}`).join()} in ${test.batch ?? ""}`;
  return [...grouped(used, key).values()].map((group) => ({
    doses: group[0]!.doses,
    batch: group[0]!.test.batch ?? "",
    tests: group.map(({ test }) => test),
  }));
}

/** ln of what the built-in factors leave of the rated strength. */
export function builtInLog(stock: LineStock, doses: readonly WearDose[]): number {
  return doses.reduce((sum, wear) => sum + builtInAt(stock, wear).log, 0);
}

/** Variances of the built-in factors of a state, summed. */
function builtInSpread(stock: LineStock, doses: readonly WearDose[]) {
  let [common, own] = [0, 0];
  for (const wear of doses) {
    const v = builtInAt(stock, wear);
    common += v.common;
    own += v.own;
  }
  return { common, own };
}

interface Within {
  /** Variance of the logarithm of new pieces of one batch [-]. */
  readonly variance: number;
  readonly freedom: number;
  /** Per wear: variance over the built-in one, and its degrees of freedom. */
  readonly ofWear: ReadonlyMap<WearId, { readonly ratio: number; readonly freedom: number }>;
}

/** Scatter among samples of one state and batch that broke, drawn to the assumed one by what that is worth. */
function withinScatter(stock: LineStock, states: readonly StockState[]): Within {
  const sums = states.map((state) => ({ state, ...scatterOf(state) }));
  const news = sums.filter(({ state }) => state.doses.length === 0);
  const add = (list: typeof sums, of: (one: (typeof sums)[number]) => number) =>
    list.reduce((sum, one) => sum + of(one), 0);
  const freedom = SCATTER_WORTH + add(news, (one) => one.freedom);
  const variance = (SCATTER_WORTH * NEW_SCATTER ** 2 + add(news, (one) => one.squares)) / freedom;
  const ids = new Set(states.flatMap(({ doses }) => doses.map(({ id }) => id)));
  const ofWear = new Map(
    [...ids].map((id) => {
      const worn = sums.filter(({ state }) => state.doses.some((wear) => wear.id === id));
      const free = SCATTER_WORTH + add(worn, (one) => one.freedom);
      const expected = ({ state }: (typeof sums)[number]) => NEW_SCATTER ** 2 + builtInSpread(stock, state.doses).own;
      const ratio = (SCATTER_WORTH + add(worn, (one) => one.squares / expected(one))) / free;
      return [id, { ratio, freedom: free - SCATTER_WORTH + SCATTER_FREEDOM }];
    }),
  );
  return { variance, freedom: freedom - SCATTER_WORTH + SCATTER_FREEDOM, ofWear };
}

/**
 * Squares of the breaking loads of a state about their mean, in logarithms, and their degrees of freedom. Where others are only
 * bounded the strongest are missing among those that broke: the likeliest scatter of all is taken (EM), for as many as broke.
 */
function scatterOf(state: StockState): { readonly squares: number; readonly freedom: number } {
  const logs = exactLogs(state);
  const bounds = state.tests.filter(({ result }) => result.kind !== "exact");
  let mean = average(logs);
  const squares = logs.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  const freedom = Math.max(0, logs.length - 1);
  if (squares === 0 || bounds.length === 0) return { squares, freedom };
  const count = logs.length + bounds.length;
  let variance = squares / logs.length;
  for (let round = 0; round < ROUNDS; round++) {
    const beyond = bounds.map((test) => beyondBound(test, mean, Math.sqrt(variance), 0));
    const [centre, before] = [(sumOf(logs) + sumOf(beyond.map((x) => x.mean))) / count, variance];
    const left = beyond.reduce((sum, x) => sum + (x.mean - centre) ** 2 + before * (1 - x.kept), 0);
    variance = (logs.reduce((sum, x) => sum + (x - centre) ** 2, 0) + left) / count;
    mean = centre;
  }
  return { squares: Math.max(squares, (variance * freedom * count) / (count - 1)), freedom };
}

function exactLogs({ tests }: StockState): number[] {
  return tests.flatMap(({ result }) => (result.kind === "exact" ? [Math.log(result.value)] : []));
}

/**
 * Variance between labelled batches in one state, by moments, drawn to the assumed one by what that is worth. Two or three
 * batches show little of it: what they show is widened as Student's t is.
 */
function betweenBatches(stock: LineStock, states: readonly StockState[], variance: number): number {
  let [sum, freedom] = [0, 0];
  for (const group of grouped(states, ({ doses }) => JSON.stringify(doses)).values()) {
    const labelled = group.filter((state) => state.batch !== "" && exactLogs(state).length > 0);
    if (labelled.length < 2) continue;
    const own = variance + builtInSpread(stock, labelled[0]!.doses).own;
    const means = labelled.map((state) => {
      const logs = exactLogs(state);
      return { mean: logs.reduce((a, b) => a + b, 0) / logs.length, error: own / logs.length };
    });
    const middle = means.reduce((a, b) => a + b.mean, 0) / means.length;
    const error = means.reduce((a, b) => a + b.error, 0) / means.length;
    sum += Math.max(0, means.reduce((a, b) => a + (b.mean - middle) ** 2, 0) - (means.length - 1) * error);
    freedom += means.length - 1;
  }
  if (freedom === 0) return BATCH_SCATTER ** 2;
  const found = (BATCHES_WORTH * BATCH_SCATTER ** 2 + sum) / (BATCHES_WORTH + freedom);
  return found * widened(freedom + BATCHES_FREEDOM) ** 2;
}

/** The doses at which each wear was tested, and a coefficient for each step between them. */
function wearKnots(
  stock: LineStock,
  states: readonly StockState[],
  coefficients: Coefficient[],
  within: Within,
): Map<WearId, WearKnots> {
  const ids = [...new Set(states.flatMap(({ doses }) => doses.map(({ id }) => id)))];
  return new Map(
    ids.map((id) => {
      const carrying = states.filter(({ doses }) => doses.some((wear) => wear.id === id));
      const doses = fewDoses(
        carrying.flatMap((state) => state.doses.filter((wear) => wear.id === id).map((w) => w.dose)),
      );
      const width = toldApart(id, carrying, states) ? TESTED_WIDTH : 1;
      let last = 0;
      const variances = doses.map((dose) => {
        last = Math.max(last, builtInAt(stock, { id, dose }).common);
        return last;
      });
      const steps = variances.map((variance, k) => {
        coefficients.push(same(Math.max(1e-9, width * (variance - (variances[k - 1] ?? 0)))));
        return coefficients.length - 1;
      });
      const { ratio, freedom } = within.ofWear.get(id)!;
      return [id, { id, doses, variances, steps, scatter: ratio, freedom, testCount: countOf(carrying) }];
    }),
  );
}

/** Whether some samples differ from others, or from new pieces, by this wear alone. */
function toldApart(id: WearId, carrying: readonly StockState[], states: readonly StockState[]): boolean {
  const key = (doses: readonly WearDose[]) => JSON.stringify(doses.map((wear) => wear.id).sort());
  const known = new Set(states.map(({ doses }) => key(doses))).add(key([]));
  return carrying.some(({ doses }) => known.has(key(doses.filter((wear) => wear.id !== id))));
}

/** The different doses, ascending; when there are many, so many of them that lie evenly among the tests. */
function fewDoses(doses: readonly number[]): number[] {
  const different = [...new Set(doses)].sort((a, b) => a - b);
  if (different.length <= MOST_DOSES) return different;
  const places = Array.from({ length: MOST_DOSES }, (_, i) =>
    Math.round((i * (different.length - 1)) / (MOST_DOSES - 1)),
  );
  return [...new Set(places.map((place) => different[place]!))];
}

/** Coefficients that a dose is the sum of: the steps to the tested dose nearest to it. */
function stepsTo({ doses, steps }: WearKnots, dose: number): number[] {
  return steps.slice(0, nearestDose(doses, dose) + 1);
}

/** Standard deviations that leave 19 of 20 means inside [-]. */
const OUTSIDE = 1.96;

/** Rounds in which bounds are replaced by what is to be expected beyond them. */
const ROUNDS = 30;

function fitStates(
  stock: LineStock,
  states: readonly StockState[],
  coefficients: readonly Coefficient[],
  coefficientsOf: (state: StockState) => readonly number[],
  wears: ReadonlyMap<WearId, WearKnots>,
  newVariance: number,
): Pick<StockModel, "means" | "covariance" | "shortfalls" | "clipped" | "tested" | "oneSided"> {
  const rated = Math.log(stock.rated.strength);
  const offset = (state: StockState) => rated + builtInLog(stock, state.doses);
  const told = states.map((state) => {
    const { common, own } = builtInSpread(stock, state.doses);
    const found = state.doses.reduce((sum, wear) => {
      return sum + wears.get(wear.id)!.scatter * builtInAt(stock, wear).own;
    }, newVariance);
    const level = offset(state);
    const exact = exactLogs(state).map((log) => log - level);
    const bounds = state.tests.filter(({ result }) => result.kind !== "exact");
    return { state, of: coefficientsOf(state), common, exact, bounds, assumed: NEW_SCATTER ** 2 + own, found };
  });
  const newTests = countOf(states.filter(({ doses }) => doses.length === 0));
  const raised = Math.max(
    0,
    average(told.filter(({ state }) => state.doses.length === 0).flatMap(({ exact }) => exact)),
  );
  const clipped = new Set<StockState>();
  const believed = told.map(({ state, common, exact }) => {
    const most = state.doses.length === 0 ? Number.POSITIVE_INFINITY : raised + MOST_BETTER * Math.sqrt(common);
    if (average(exact) > most) clipped.add(state);
    return average(exact.map((value) => Math.min(value, most)));
  });
  const exactRows = told.flatMap(({ of, exact, assumed, found }, k): RegressionRow[] => {
    const n = exact.length;
    return n === 0 ? [] : [{ of, y: believed[k]!, assumed: assumed / n, found: found / n }];
  });
  let bounded: (RegressionRow & { readonly kept: number })[] = [];
  const exactYs = exactRows.map(({ y }) => y);
  let means = regressionSolver(coefficients, exactRows)(exactYs);
  const boundRows = told.flatMap(({ of, bounds, assumed, found }) => bounds.map(() => ({ of, assumed, found })));
  const solve = boundRows.length > 0 ? regressionSolver(coefficients, [...exactRows, ...boundRows]) : undefined;
  for (let round = 0; solve !== undefined && round < ROUNDS; round++) {
    bounded = told.flatMap(({ of, bounds, assumed, found, state }) => {
      const centre = of.reduce((sum, i) => sum + means[i]!, 0);
      return bounds.map((test) => {
        const { mean, kept } = beyondBound(test, centre, Math.sqrt(assumed), offset(state));
        return { of, y: mean, assumed, found, kept };
      });
    });
    means = solve([...exactYs, ...bounded.map(({ y }) => y)]);
  }
  let newSum = 0;
  let levelGoverned = false;
  const shortfalls: { id: WearId; dose: number; by: number }[] = [];
  const tested = new Map<StockState, number>();
  for (const { state, of, exact, bounds, assumed, common } of told) {
    const fitted = of.reduce((sum, i) => sum + means[i]!, 0);
    const limits = bounds.map((test) => beyondBound(test, fitted, Math.sqrt(assumed), offset(state)).mean);
    const mean = average([...exact, ...limits]);
    tested.set(state, mean + builtInLog(stock, state.doses));
    const error = Math.sqrt(assumed / (exact.length + bounds.length));
    // Within what the model leaves open a mean may lie low by chance; below that band it governs as it is.
    const outside = mean < -OUTSIDE * Math.sqrt(common + NEW_SCATTER ** 2 + assumed / (exact.length + bounds.length));
    const by = fitted - mean - (outside ? 0 : error);
    const widest = [...state.doses].sort((a, b) => commonOf(stock, b) - commonOf(stock, a))[0];
    if (exact.length > 0 && widest !== undefined && by > 0) shortfalls.push({ ...widest, by });
    if (widest === undefined) {
      newSum += mean * (exact.length + bounds.length);
      levelGoverned ||= exact.length > 0 && by > 0 && outside;
    }
  }
  // New pieces that contradict the rated strength to the low side are the level, whatever else was tested.
  if (levelGoverned) means[0] = Math.min(means[0]!, newSum / newTests);
  // A bound tells less than a breaking load: it counts with the information that is in it, and not at all below a fiftieth.
  const informed = bounded.flatMap(({ kept, assumed, found, ...row }) =>
    kept < 0.02 ? [] : [{ ...row, assumed: assumed / kept, found: found / kept }],
  );
  return {
    means,
    covariance: regressionCovariance(coefficients, [...exactRows, ...informed]),
    shortfalls,
    clipped,
    tested,
    oneSided: oneSided(
      told.map((one, k) => ({ ...one, believed: believed[k]!, offset: offset(one.state) })),
      coefficients,
      wears,
      { scatter: NEW_SCATTER ** 2, batch: BATCH_SCATTER ** 2 },
    ),
  };
}

const commonOf = (stock: LineStock, wear: WearDose) => builtInAt(stock, wear).common;
const sumOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const average = (values: readonly number[]) => (values.length === 0 ? 0 : sumOf(values) / values.length);

/**
 * Depth of the 5 % value of a Weibull distribution below its mean, in standard deviations of the logarithm, over that of a
 * lognormal one: (ln(−ln 0.95) + γ)·√6 ÷ π ÷ −1.645. Tests cannot tell the two apart, so new pieces are taken to scatter so much more [-].
 */
export const WEIBULL_DEPTH = 1.13;

/** By how much a standard deviation that rests on few tests is widened, for a 5 % value by 1.645 of them [-]. */
export function widened(freedom: number): number {
  return tQuantile(0.95, freedom) / 1.6448536269514722;
}
