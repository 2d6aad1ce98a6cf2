/** How pieces of one state scatter, within a batch and between batches. See STATISTICS.md, "Own tests of a stock". */

import type { LineStock } from "@secondline/rig";
import { tQuantile } from "@secondline/statistics";
import { grouped } from "../breakLog/grouped.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { Z95 } from "../derating/lognormal.ts";
import { beyondBound, isBelow } from "./bounded.ts";
import type { StockState } from "./stockModel.ts";
import { builtInSpread, type WearId } from "./wearFactors.ts";

/**
 * Scatter of new pieces of one batch, as standard deviation of the logarithm; the degrees of freedom that this value is worth
 * beside the tests; and the degrees that it adds to Student's t. A scatter of about a twentieth is known better than its exact
 * value [-].
 */
export const NEW_SCATTER = 0.05;
/** Standard deviations that leave 19 of 20 means inside [-]. */
export const BAND_DEVIATIONS = 1.96;
const SCATTER_WORTH_FREEDOM = 1;
const SCATTER_ADDED_FREEDOM = 4;
/**
 * Scatter between batches, as standard deviation of the logarithm; the degrees of freedom that this value is worth beside named
 * batches; and the degrees that it adds to Student's t [-].
 */
export const BATCH_SCATTER = 0.015;
const BATCHES_WORTH_FREEDOM = 0.5;
const BATCHES_ADDED_FREEDOM = 1;
/** Most rounds in which bounds are replaced by the value to be expected beyond them [-]. */
const MOST_ROUNDS = 30;

export interface Within {
  /** Variance of the logarithm of new pieces of one batch [-]. */
  readonly variance: number;
  readonly freedom: number;
  /** Per wear: variance over the built-in one, and its degrees of freedom. */
  readonly ofWear: ReadonlyMap<WearId, { readonly ratio: number; readonly freedom: number }>;
}

/** Scatter among the samples of one state and batch that broke, drawn to the assumed scatter by the weight of the latter. */
export function withinScatter(stock: LineStock, states: readonly StockState[]): Within {
  const sums = states.map((state) => ({ state, ...scatterOf(state) }));
  const news = sums.filter(({ state }) => state.doses.length === 0);
  const add = (list: typeof sums, of: (one: (typeof sums)[number]) => number) =>
    list.reduce((sum, one) => sum + of(one), 0);
  const freedom = SCATTER_WORTH_FREEDOM + add(news, (one) => one.freedom);
  const variance = (SCATTER_WORTH_FREEDOM * NEW_SCATTER ** 2 + add(news, (one) => one.squares)) / freedom;
  const ids = new Set(states.flatMap(({ doses }) => doses.map(({ id }) => id)));
  const ofWear = new Map(
    [...ids].map((id) => {
      const worn = sums.filter(({ state }) => state.doses.some((wear) => wear.id === id));
      const free = SCATTER_WORTH_FREEDOM + add(worn, (one) => one.freedom);
      const expected = ({ state }: (typeof sums)[number]) => NEW_SCATTER ** 2 + builtInSpread(stock, state.doses).own;
      const ratio = (SCATTER_WORTH_FREEDOM + add(worn, (one) => one.squares / expected(one))) / free;
      return [id, { ratio, freedom: free - SCATTER_WORTH_FREEDOM + SCATTER_ADDED_FREEDOM }];
    }),
  );
  return { variance, freedom: freedom - SCATTER_WORTH_FREEDOM + SCATTER_ADDED_FREEDOM, ofWear };
}

/**
 * Squares of the breaking loads of a state about their mean, in logarithms, and their degrees of freedom. If others are only
 * bounded, the strongest are missing among those that broke. Then the likeliest scatter of all pieces is taken (EM), with the
 * degrees of freedom of those that broke. A piece that broke below a load may widen the scatter, never narrow it: the largest
 * counts of the scatters without such pieces, with the lowest of them, the two lowest and so on.
 */
function scatterOf(state: StockState): { readonly squares: number; readonly freedom: number } {
  const logs = exactLogs(state);
  const bounds = state.tests.filter(({ result }) => result.kind !== "exact");
  const mean = average(logs);
  const squares = logs.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  const freedom = Math.max(0, logs.length - 1);
  if (squares === 0 || bounds.length === 0) return { squares, freedom };
  const others = bounds.filter((test) => !isBelow(test));
  const below = bounds.flatMap((test) => (test.result.kind === "below" ? [{ test, at: test.result.value }] : []));
  const lowest = below.sort((a, b) => a.at - b.at).map(({ test }) => test);
  const withSome = [0, ...lowest.map((_, k) => k + 1)].map((k) => [...others, ...lowest.slice(0, k)]);
  return { squares: Math.max(squares, ...withSome.map((some) => likeliestSquares(logs, squares, some))), freedom };
}

function likeliestSquares(logs: readonly number[], squares: number, bounds: readonly BreakTest[]): number {
  if (bounds.length === 0) return squares;
  const [count, freedom] = [logs.length + bounds.length, logs.length - 1];
  let [mean, variance] = [average(logs), squares / logs.length];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const beyond = bounds.map((test) => beyondBound(test, mean, Math.sqrt(variance), 0));
    const [centre, before] = [(sumOf(logs) + sumOf(beyond.map((x) => x.mean))) / count, variance];
    const left = beyond.reduce((sum, x) => sum + (x.mean - centre) ** 2 + before * (1 - x.kept), 0);
    variance = (logs.reduce((sum, x) => sum + (x - centre) ** 2, 0) + left) / count;
    mean = centre;
  }
  return (variance * freedom * count) / (count - 1);
}

export function exactLogs({ tests }: StockState): number[] {
  return tests.flatMap(({ result }) => (result.kind === "exact" ? [Math.log(result.value)] : []));
}

/**
 * Variance between named batches in one state, by moments, drawn to the assumed variance by the weight of the latter. Two or
 * three batches show little of it, so their variance is widened as Student's t is.
 */
export function betweenBatches(stock: LineStock, states: readonly StockState[], variance: number): number {
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
  const found = (BATCHES_WORTH_FREEDOM * BATCH_SCATTER ** 2 + sum) / (BATCHES_WORTH_FREEDOM + freedom);
  return found * widened(freedom + BATCHES_ADDED_FREEDOM) ** 2;
}

const sumOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const average = (values: readonly number[]) => (values.length === 0 ? 0 : sumOf(values) / values.length);

/**
 * Depth of the 5 % value of a Weibull distribution below its mean, in standard deviations of the logarithm, over that of a
 * lognormal one: (ln(−ln 0.95) + γ)·√6 ÷ π ÷ −1.645. Tests cannot tell the two apart, so the scatter of new pieces is
 * multiplied by this [-].
 */
export const WEIBULL_DEPTH = 1.13;

/** Factor that widens a standard deviation from few tests, so that 1.645 such deviations give the 5 % value [-]. */
export function widened(freedom: number): number {
  return tQuantile(0.95, freedom) / Z95;
}
