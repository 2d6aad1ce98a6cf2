/**
 * The chance that any of several normal margins lies below zero: importance sampling of a union of half-spaces, one of them
 * conditioned on at a time. A. B. Owen, Y. Maximov & M. Chertkov, Electronic Journal of Statistics 13 (2019) 231–254: unbiased,
 * with a relative error that stays bounded however small the chance is.
 */

import { choleskyRoot } from "./cholesky.ts";
import { normalCdf } from "./normal.ts";
import type { Random } from "./random.ts";

/** Normal margins: a part fails where its own is below zero. */
export interface NormalMargins {
  readonly means: ArrayLike<number>;
  readonly covariance: readonly ArrayLike<number>[];
}

/** Which margins there are in a case, and how likely it is: a part may be loaded in some falls only. */
export interface LoadCase {
  readonly chance: number;
  readonly has: readonly boolean[];
}

/** Chances of a union of failures. */
export interface UnionChance {
  /** Chance of each margin to lie below zero: exact [-]. */
  readonly each: Float64Array;
  readonly any: number;
  /** Share of the cases in which each is the least of all; they add up to one, or to less where a case has none [-]. */
  readonly least: Float64Array;
}

/** `samples`: how many for `any` and `least`. `cases`: default one, in which every margin is there. */
export function unionChance(
  { means, covariance }: NormalMargins,
  random: Random,
  samples: number,
  cases: readonly LoadCase[] = [{ chance: 1, has: Array.from(means, () => true) }],
): UnionChance {
  const count = means.length;
  const deviations = Float64Array.from(covariance, (row, i) => Math.sqrt(row[i]!));
  const each = Float64Array.from(deviations, (deviation, i) => {
    const there = cases.reduce((sum, { chance, has }) => (has[i] ? sum + chance : sum), 0);
    return there * chanceBelowZero(means[i]!, deviation);
  });
  const sum = each.reduce((total, one) => total + one, 0);
  const root = choleskyRoot(covariance.map((row) => Array.from(row)));
  const least = new Float64Array(count);
  const deviates = new Float64Array(count);
  const margins = new Float64Array(count);
  const choice = choiceOf(cases);
  const choicesWith = Array.from(means, (_, j) => choiceOf(cases.filter((one) => one.has[j])));
  let inverse = 0;
  for (let s = 0; s < samples; s++) {
    for (let i = 0; i < count; i++) {
      deviates[i] = random.normal();
      const row = root[i]!;
      let margin = means[i]!;
      for (let k = 0; k <= i; k++) margin += row[k]! * deviates[k]!;
      margins[i] = margin;
    }
    const first = leastOf(margins, pick(choice, random).has);
    if (first >= 0) least[first]! += 1 / samples;
    if (sum === 0) continue;
    const j = pickPart(each, sum, random);
    const { has } = pick(choicesWith[j]!, random);
    const variance = covariance[j]![j]!;
    const shift =
      (means[j]! + deviations[j]! * tailBelow(-means[j]! / deviations[j]!, random) - margins[j]!) / variance;
    let hit = 0;
    for (let i = 0; i < count; i++) {
      if (has[i] && (i === j || margins[i]! + covariance[i]![j]! * shift < 0)) hit++;
    }
    inverse += 1 / hit;
  }
  // A union is no rarer than the likeliest of its events, and no likelier than all of them together.
  const any = Math.min(1, sum, Math.max(Math.max(0, ...each), (sum * inverse) / samples));
  return { each, any, least };
}

const chanceBelowZero = (mean: number, deviation: number): number =>
  deviation === 0 ? (mean < 0 ? 1 : 0) : normalCdf(-mean / deviation);

function leastOf(margins: Float64Array, has: readonly boolean[]): number {
  let least = -1;
  for (let i = 0; i < margins.length; i++) if (has[i] && (least < 0 || margins[i]! < margins[least]!)) least = i;
  return least;
}

/** Cases to pick one of, and their chances together. */
interface Choice {
  readonly cases: readonly LoadCase[];
  readonly sum: number;
}

const choiceOf = (cases: readonly LoadCase[]): Choice => ({
  cases,
  sum: cases.reduce((sum, { chance }) => sum + chance, 0),
});

function pick({ cases, sum }: Choice, random: Random): LoadCase {
  if (cases.length === 1) return cases[0]!;
  let left = random.uniform() * sum;
  for (const one of cases) {
    left -= one.chance;
    if (left < 0) return one;
  }
  return cases.at(-1)!;
}

function pickPart(each: Float64Array, sum: number, random: Random): number {
  let left = random.uniform() * sum;
  let last = 0;
  for (let i = 0; i < each.length; i++) {
    if (each[i] === 0) continue;
    last = i;
    left -= each[i]!;
    if (left < 0) break;
  }
  return last;
}

/** From here on a tail is drawn by an exponential envelope [-]. */
const ENVELOPE_FROM = 0.45;

/** A standard normal deviate below a limit: C. P. Robert, Statistics and Computing 5 (1995) 121–125. */
function tailBelow(limit: number, random: Random): number {
  const from = -limit;
  if (from < ENVELOPE_FROM) {
    for (;;) {
      const z = random.normal();
      if (z <= limit) return z;
    }
  }
  const rate = (from + Math.sqrt(from * from + 4)) / 2;
  for (;;) {
    const z = from - Math.log(1 - random.uniform()) / rate;
    if (random.uniform() <= Math.exp(-((z - rate) ** 2) / 2)) return -z;
  }
}
