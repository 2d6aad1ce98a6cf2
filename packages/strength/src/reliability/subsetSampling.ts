/**
 * Small probabilities by subset simulation: failure is reached through a chain of more and more demanding conditions, each
 * met by a tenth of the samples before it, and sampled by Markov chains within it. S.-K. Au & J. L. Beck, Probabilistic
 * Engineering Mechanics 16 (2001) 263–277.
 */
import { normalSpace, type ReliabilityModel } from "./model.ts";
import { normalVector, type Random, seededRandom } from "./random.ts";

export interface SmallProbability {
  readonly value: number;
  /** Two-sided 95 % interval, lognormal about the value, from the chains' own scatter. */
  readonly low: number;
  readonly high: number;
  /** Coefficient of variation of the estimate [-]. */
  readonly spread: number;
  readonly levels: number;
  /** How often the loads were computed. */
  readonly evaluations: number;
  /** Samples of the last level that fail, in standard deviations: where failure comes from. */
  readonly failures: readonly Float64Array[];
  /** False when even the last level did not reach failure: the value is then an upper bound. */
  readonly reached: boolean;
}

export interface SubsetOptions {
  readonly seed: number;
  /** Samples per level; a multiple of 10. Default 2000. */
  readonly perLevel?: number;
  /** Each level divides the probability by ten. Default 12. */
  readonly mostLevels?: number;
}

const SHARE = 0.1;
/** Width of the uniform steps of the chains, in standard deviations [-]. */
const STEP = 1;

interface Sample {
  readonly u: Float64Array;
  /** Least log margin: failure at or below zero. */
  readonly margin: number;
}

/** Probability that any part of the model fails. */
export function smallFailureProbability(model: ReliabilityModel, options: SubsetOptions): SmallProbability {
  const space = normalSpace(model);
  return subsetSampling((u) => Math.min(...space.logMargins(u)), space.dimension, options);
}

/** P(margin(u) ≤ 0) for independent standard normal u. */
export function subsetSampling(
  margin: (u: Float64Array) => number,
  dimension: number,
  options: SubsetOptions,
): SmallProbability {
  const n = options.perLevel ?? 2000;
  const chains = Math.round(n * SHARE);
  if (chains < 10 || chains * 10 !== n) throw new Error(`samples per level are a multiple of 10 from 100, got ${n}`);
  const random = seededRandom(options.seed);
  const mostLevels = options.mostLevels ?? 12;
  let samples: Sample[] = Array.from({ length: n }, () => {
    const u = normalVector(random, dimension);
    return { u, margin: margin(u) };
  });
  let evaluations = n;
  let [probability, variance] = [1, 0];
  for (let level = 1; ; level++) {
    const sorted = [...samples].sort((a, b) => a.margin - b.margin);
    const threshold = (sorted[chains - 1]!.margin + sorted[chains]!.margin) / 2;
    const last = threshold <= 0 || level === mostLevels;
    const limit = last ? 0 : threshold;
    const hits = samples.filter((s) => s.margin <= limit).length;
    const share = hits / n;
    // The samples lie chain after chain: level 1 is independent, later ones correlate along each chain.
    const correlation = level === 1 ? 0 : chainCorrelation(samples, limit, share, chains);
    // Infinite when none failed, which `result` answers by its bound.
    variance += ((1 - share) / (share * n)) * (1 + correlation);
    if (last) {
      const failures = samples.filter((s) => s.margin <= 0).map((s) => s.u);
      return { ...result(probability, share, variance, n), levels: level, evaluations, failures };
    }
    probability *= share;
    const seeds = sorted.slice(0, chains);
    samples = seeds.flatMap((start) => chain(start, n / chains, limit, margin, random));
    evaluations += n - chains;
  }
}

/** `before`: probability of the last level's condition; `share`: of its samples that fail. */
function result(before: number, share: number, variance: number, n: number) {
  const probability = before * share;
  if (share === 0) {
    // None of n: at 95 % fewer than 3 in n (rule of three).
    const bound = (before * 3) / n;
    return { value: bound, low: 0, high: bound, spread: Number.NaN, reached: false };
  }
  const width = Math.exp(1.959964 * Math.sqrt(Math.log1p(variance)));
  const [low, high] = [probability / width, Math.min(1, probability * width)];
  return { value: probability, low, high, spread: Math.sqrt(variance), reached: true };
}

/** Modified Metropolis: each coordinate takes or leaves its own step, then the whole must stay within the level. */
function chain(
  start: Sample,
  length: number,
  limit: number,
  margin: (u: Float64Array) => number,
  random: Random,
): Sample[] {
  const samples = [start];
  let at = start;
  while (samples.length < length) {
    const u = at.u.slice();
    for (let i = 0; i < u.length; i++) {
      const old = u[i]!;
      const step = old + STEP * (2 * random.uniform() - 1);
      if (random.uniform() < Math.exp((old * old - step * step) / 2)) u[i] = step;
    }
    const next = { u, margin: margin(u) };
    if (next.margin <= limit) at = next;
    samples.push(at);
  }
  return samples;
}

/** Σ 2(1 − kC/N)·ρ(k) of the indicator along the chains (Au & Beck 2001, eq. 29). */
function chainCorrelation(samples: readonly Sample[], limit: number, share: number, chains: number): number {
  const length = samples.length / chains;
  const hit = (c: number, k: number) => (samples[c * length + k]!.margin <= limit ? 1 : 0);
  const scale = share * (1 - share);
  if (scale === 0) return 0;
  let sum = 0;
  for (let lag = 1; lag < length; lag++) {
    let both = 0;
    for (let c = 0; c < chains; c++) for (let k = 0; k + lag < length; k++) both += hit(c, k) * hit(c, k + lag);
    const correlation = (both / (chains * (length - lag)) - share * share) / scale;
    sum += 2 * (1 - lag / length) * correlation;
  }
  return Math.max(0, sum);
}
