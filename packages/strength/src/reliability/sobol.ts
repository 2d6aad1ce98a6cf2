/**
 * Share of each uncertain input in the variance of a result: first-order and total Sobol indices. Estimators of A. Saltelli
 * et al., Computer Physics Communications 181 (2010) 259–270 (first order) and M. J. W. Jansen, ibid. 117 (1999) 35–43
 * (total); intervals by bootstrap.
 */

import type { Share } from "./firstToFail.ts";
import { normalSpace, type ReliabilityModel } from "./model.ts";
import { normalVector, type Random, seededRandom } from "./random.ts";

export interface SobolIndex {
  readonly name: string;
  /** Variance explained by this input alone, with a two-sided 95 % interval [-]. */
  readonly first: Share;
  /** Variance in which it has any part [-]. */
  readonly total: Share;
  /** False when the interval of the first-order index includes zero: then it cannot be told from zero. */
  readonly distinguishable: boolean;
}

export interface SobolOptions {
  /** Rows of the two sample matrices; the function is computed rows × (inputs + 2) times. */
  readonly rows: number;
  readonly seed: number;
}

const RESAMPLES = 200;

/**
 * Indices of `f` over inputs drawn independently by `draw`, in the order of `names`. Inputs of one name are one group, with
 * one index for all of them.
 */
export function sobolIndices(
  f: (inputs: ArrayLike<number>) => number,
  draw: (random: Random) => ArrayLike<number>,
  names: readonly string[],
  options: SobolOptions,
): SobolIndex[] {
  const random = seededRandom(options.seed);
  const { rows } = options;
  const a = Array.from({ length: rows }, () => draw(random));
  const b = Array.from({ length: rows }, () => draw(random));
  const [fa, fb] = [a.map(f), b.map(f)];
  // Centred values: the first-order estimator loses digits to a large mean.
  const centre = [...fa, ...fb].reduce((sum, y) => sum + y, 0) / (2 * rows);
  const all = Float64Array.from({ length: rows }, (_, r) => r);
  const picks = Array.from({ length: RESAMPLES }, () => all.map(() => Math.floor(random.uniform() * rows)));
  return [...new Set(names)].map((name) => {
    const fab = a.map((row, r) => f(Array.from(row, (x, j) => (names[j] === name ? b[r]![j]! : x))));
    const estimate = (pick: Float64Array) => estimates(fa, fb, fab, centre, pick);
    const whole = estimate(all);
    const again = picks.map(estimate);
    const first = withInterval(
      whole.first,
      again.map((e) => e.first),
    );
    const total = withInterval(
      whole.total,
      again.map((e) => e.total),
    );
    return { name, first, total, distinguishable: first.low > 0 };
  });
}

/** Shares of a model's inputs, causes and parts' own scatter in the least log margin. */
export function marginShares(model: ReliabilityModel, options: SobolOptions): SobolIndex[] {
  const space = normalSpace(model);
  const f = (u: ArrayLike<number>) => Math.min(...space.logMargins(Float64Array.from(u)));
  return sobolIndices(f, (random) => normalVector(random, space.dimension), space.names, options);
}

function estimates(
  fa: readonly number[],
  fb: readonly number[],
  fab: readonly number[],
  centre: number,
  pick: Float64Array,
) {
  let [cross, jump, sum, squares] = [0, 0, 0, 0];
  for (const r of pick) {
    const [ya, yb, yab] = [fa[r]! - centre, fb[r]! - centre, fab[r]! - centre];
    cross += yb * (yab - ya);
    jump += (ya - yab) ** 2;
    sum += ya + yb;
    squares += ya * ya + yb * yb;
  }
  const n = pick.length;
  const variance = squares / (2 * n) - (sum / (2 * n)) ** 2;
  if (variance <= 0) return { first: 0, total: 0 };
  return { first: cross / n / variance, total: jump / (2 * n) / variance };
}

function withInterval(value: number, resampled: readonly number[]): Share {
  const sorted = [...resampled].sort((a, b) => a - b);
  const at = (p: number) => sorted[Math.round(p * (sorted.length - 1))]!;
  return { value, low: at(0.025), high: at(0.975) };
}
