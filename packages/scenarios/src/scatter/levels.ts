/**
 * What 95 % of the draws of an event stay under, worked out from a few draws.
 *
 * y = ln of a load = middle of the event + b·u + ε. The u are the deviates of what scatters, b says how much the load goes with each,
 * ε is chance: a catch amplifies the last gram. The middle is the event's own. b and the size of ε are learnt from all events of a
 * class together, and the size of ε from the event's own draws where they say something else. Normal-inverse-gamma as in A. Gelman
 * et al., Bayesian Data Analysis (3rd ed. 2013), 14.2; the 95 % value is taken at 75 % confidence, as characteristic values are in
 * EN 14358:2016 and ISO 12491:1997 (from memory). It is never less than what the draws themselves say without any model.
 */
import {
  choleskyFactor,
  choleskyInverse,
  lowerBoundRank,
  normalQuantile,
  toleranceFactor,
} from "@secondline/statistics";

/** The draws of one event: a quantity in every draw, and the deviates of the inputs that were drawn. */
export interface EventDraws {
  /** [unit of the quantity]; 0 where a run did not load the part. */
  readonly values: readonly number[];
  /** One row per value, all rows of one length; a row is empty if nothing was drawn. */
  readonly deviates: readonly (readonly number[])[];
  /** What differences are told in, where the quantity itself may be near 0, such as a height; default: its mean, or its logarithm. */
  readonly scale?: number;
}

/** What neighbouring events say of the middle of an event that was not drawn, in logarithms. */
export interface FromNeighbours {
  readonly middle: number;
  readonly variance: number;
}

/** The level of a quantity in one event. */
export interface Level {
  /** Middle of the draws [unit of the quantity]. */
  readonly middle: number;
  /** What 95 % of draws stay under, at 75 % confidence. */
  readonly value: number;
  /**
   * By which events are ranked: the same, but of an event that was not drawn without the confidence, which would put it first, and a
   * little less: one that was drawn stands for one that asks for no more than that above it.
   */
  readonly rank: number;
  /** 95 % interval of that 95 % value. */
  readonly low: number;
  readonly high: number;
  /** Number of draws that the level rests on. */
  readonly draws: number;
}

/** How a class of events scatters, relative to each event's middle. */
export interface Scatter {
  readonly slopes: readonly number[];
  /** Covariance of the slopes. */
  readonly uncertain: readonly Float64Array[];
  /** Variance of what is left to chance, and on how many degrees of freedom it rests. */
  readonly chance: number;
  readonly freedom: number;
}

/** Assumed before any draw: how much one standard deviation of an input moves a load, and how much chance does [-]. */
export const PRIOR_SLOPE = 0.06;
export const PRIOR_CHANCE = 0.08;
const LEAST_SLOPE = 0.005;
/** The weight of `PRIOR_SLOPE` and `PRIOR_CHANCE`, in draws [-]. */
export const PRIOR_DRAWS = 4;
/** The weight of a class against a family's draws, and of a family against an event's own, about how large chance is, in draws [-]. */
const CLASS_WEIGHT = 10;
/** Within this ratio of the largest to the least, differences are told in logarithms [-]. */
export const LOG_RANGE = 4;

/** So many runs are taken to end before their worst, at most: it was counted (docs/decisions/0007-end-of-a-run.md) [-]. */
const ENDED_EARLY_SHARE = 0.005;
/** 95 of 100 falls stay under it, those counted in that ended before their worst. */
const SHARE_BELOW_E = 0.95 + ENDED_EARLY_SHARE;
export const QUANTILE_BELOW_E = normalQuantile(SHARE_BELOW_E);
const CONFIDENCE_SHARE = 0.75;
export const CONFIDENCE_QUANTILE = normalQuantile(CONFIDENCE_SHARE);
const HIGH_CONFIDENCE_SHARE = 0.975;
export const INTERVAL_QUANTILE = normalQuantile(HIGH_CONFIDENCE_SHARE);

/**
 * Draws that scatter by so much more than the model takes them for, or that reach above its E, may be of an event that scatters in a way of
 * its own. How much, only they can say: the interval of E then reaches as high as they alone allow, so that the event is drawn again
 * where a limit is near [-].
 */
const WILDER_RATIO = 1.1;
/** Draws are taken to reach above their median by no more than so many times as far as those above it do [-]. */
const SKEW_RATIO = 1.3;
/** Fewer draws alone say nothing of how far they scatter [-]. */
const LEAST_ALONE = 4;

/** An event that was not drawn counts as worse than a drawn one from so much above it on [-]. */
const UNDRAWN_RANK_MARGIN = 0.03;

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

interface Differences {
  readonly kind: "log" | "share" | "scale";
  /** Middle in logarithms, or as it is. */
  readonly middle: number;
  readonly unit: number;
  readonly each: readonly number[];
  readonly meanDeviates: readonly number[];
}

function differences({ values, deviates, scale }: EventDraws, inputs: number): Differences {
  const least = Math.min(...values);
  const kind = scale !== undefined ? "scale" : least > 0 && Math.max(...values) < LOG_RANGE * least ? "log" : "share";
  const told = kind === "log" ? values.map(Math.log) : values;
  const middle = mean(told);
  const unit = kind === "log" ? 1 : kind === "scale" ? scale! : middle > 0 ? middle : 1;
  return {
    kind,
    middle,
    unit,
    each: told.map((value) => (value - middle) / unit),
    meanDeviates: meanDeviates(deviates, inputs),
  };
}

function meanDeviates(deviates: EventDraws["deviates"], inputs: number): readonly number[] {
  const means = new Array<number>(inputs).fill(0);
  for (let k = 0; k < inputs; k++) {
    for (const row of deviates) means[k]! += row[k] ?? 0;
    means[k]! /= deviates.length;
  }
  return means;
}

/** Passes until the size of chance and the slopes agree. */
const MOST_PASSES = 6;

/** Learns how the events of a class scatter. `inputs`: how many deviates a row has. */
export function scatterOf(events: readonly EventDraws[], inputs: number): Scatter {
  const square = () => Array.from({ length: inputs }, () => new Float64Array(inputs));
  const moment = square();
  const right = new Float64Array(inputs);
  let squares = 0;
  let freedom = 0;
  for (const event of events) {
    if (event.values.length < 2) continue;
    const { each, meanDeviates, kind } = differences(event, inputs);
    // A part that only some draws load scatters in its own way; it says nothing of the others.
    if (kind === "share") continue;
    freedom += each.length - 1;
    each.forEach((y, j) => {
      const u = meanDeviates.map((middle, k) => (event.deviates[j]![k] ?? 0) - middle);
      squares += y * y;
      for (let a = 0; a < inputs; a++) {
        if (u[a] === 0) continue;
        right[a]! += u[a]! * y;
        for (let b = 0; b < inputs; b++) moment[a]![b]! += u[a]! * u[b]!;
      }
    });
  }
  // All that the draws of an event differ by: chance, and every input its share of the rest. So a few draws, which cannot tell many
  // slopes apart, still say how much those come to together.
  const among = Math.max(1, moment.filter((row, i) => row[i]! > 0).length);
  const all = (PRIOR_DRAWS * (PRIOR_CHANCE ** 2 + among * PRIOR_SLOPE ** 2) + squares) / (PRIOR_DRAWS + freedom);
  let chance = PRIOR_CHANCE ** 2;
  let slopes: readonly number[] = [];
  let inverse: readonly Float64Array[] = [];
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const ofSlope = Math.max(LEAST_SLOPE ** 2, (all - chance) / among);
    const known = moment.map((row, i) => row.map((one, k) => (i === k ? one + chance / ofSlope : one)));
    inverse = choleskyInverse(choleskyFactor(known));
    slopes = inverse.map((row) => row.reduce((sum, one, k) => sum + one * right[k]!, 0));
    const left = squares - 2 * product(slopes, right) + form(slopes, moment, slopes);
    // What the slopes may be off goes with chance: as many draws are used up by them as they were learnt with.
    const used = moment.reduce((sum, row, i) => sum + row.reduce((all, one, k) => all + one * inverse[k]![i]!, 0), 0);
    chance = (PRIOR_DRAWS * PRIOR_CHANCE ** 2 + Math.max(0, left)) / (PRIOR_DRAWS + Math.max(0, freedom - used));
  }
  const uncertain = inverse.map((row) => row.map((one) => one * chance));
  return { slopes, uncertain, chance, freedom: PRIOR_DRAWS + freedom };
}

/** How events of a family scatter: as their class does, but what is left to chance is as large as their own draws say too. */
export function scatterOfFamily(events: readonly EventDraws[], ofClass: Scatter): Scatter {
  let [squares, freedom] = [0, 0];
  for (const event of events) {
    if (event.values.length < 2) continue;
    const found = differences(event, ofClass.slopes.length);
    if (found.kind === "share") continue;
    squares += leftToChance(event, found, ofClass.slopes);
    freedom += event.values.length - 1;
  }
  return { ...ofClass, chance: (CLASS_WEIGHT * ofClass.chance + squares) / (CLASS_WEIGHT + freedom) };
}

/** Sum of squares of what the slopes leave of an event's differences [-]. */
function leftToChance({ deviates }: EventDraws, found: Differences, slopes: readonly number[]): number {
  return found.each.reduce((sum, y, j) => {
    const going = slopes.reduce((all, slope, k) => all + slope * ((deviates[j]![k] ?? 0) - found.meanDeviates[k]!), 0);
    return sum + (y - going) ** 2;
  }, 0);
}

const product = (a: readonly number[], b: ArrayLike<number>): number => a.reduce((sum, x, k) => sum + x * b[k]!, 0);

const form = (a: readonly number[], matrix: readonly Float64Array[], b: readonly number[]): number =>
  a.reduce((sum, x, i) => (x === 0 ? sum : sum + x * b.reduce((inner, y, j) => inner + matrix[i]![j]! * y, 0)), 0);

/** How the model spreads the draws of an event about their middle, in the unit of the differences. */
interface Modelled {
  readonly spread: number;
  /** By how much the draws' inputs lay above their own middles, times the slopes. */
  readonly shift: number;
  /** Standard deviation of the 95 % value. */
  readonly error: number;
}

function modelled(
  draws: EventDraws,
  found: Differences,
  { slopes, uncertain, chance, freedom }: Scatter,
  middleVariance: number | undefined,
): Modelled {
  const { meanDeviates } = found;
  const count = draws.values.length;
  // Only what was drawn in this event scatters in it; where nothing was drawn, everything may.
  const drawn = isDrawn(draws);
  const active = slopes.map((_, k) => (!drawn || draws.deviates.some((row) => (row[k] ?? 0) !== 0) ? 1 : 0));
  const chanceHere = (CLASS_WEIGHT * chance + leftToChance(draws, found, slopes)) / (CLASS_WEIGHT + count - 1);
  const seen = slopes.map((slope, k) => slope * active[k]!);
  const going = seen.reduce((sum, slope, k) => sum + slope ** 2 + active[k]! * uncertain[k]![k]!, 0);
  const spread = Math.sqrt(going + chanceHere);
  const ofMiddle = (middleVariance ?? chanceHere / count) + form(meanDeviates, uncertain, meanDeviates);
  // Chance is as well known as the event and its class together say; the class alone, where that is less.
  const ofChance = (2 * chanceHere ** 2) / (count - 1 + Math.min(CLASS_WEIGHT, freedom));
  const ofSpread = (4 * form(seen, uncertain, seen) + ofChance) / (4 * spread ** 2);
  const error = Math.sqrt(ofMiddle + QUANTILE_BELOW_E ** 2 * ofSpread);
  return { spread, shift: product(slopes, meanDeviates), error };
}

/** Whether something was drawn in any of the runs. */
export const isDrawn = ({ deviates }: EventDraws): boolean => deviates.some((row) => row.length > 0);

/** The 95 % value of a quantity in one event. `draws` has one value at least. */
export function levelOf(draws: EventDraws, scatter: Scatter, neighbours?: FromNeighbours): Level {
  const found = differences(draws, scatter.slopes.length);
  const { kind, unit } = found;
  const beside = kind === "log" ? neighbours : undefined;
  const middle = beside?.middle ?? found.middle;
  const count = draws.values.length;
  const { spread, shift, error } = modelled(draws, found, scatter, beside?.variance);
  const at = (difference: number) => (kind === "log" ? Math.exp(middle + difference) : middle + unit * difference);
  const above = QUANTILE_BELOW_E * spread - shift;
  const byModel = at(above + CONFIDENCE_QUANTILE * error);
  const drawn = isDrawn(draws);
  const seenToReach = drawn ? seenBound(draws.values) : Number.NEGATIVE_INFINITY;
  const alone = drawn && count >= LEAST_ALONE ? drawsAlone(found) : undefined;
  const isWilder =
    kind === "log" && alone !== undefined && (seenToReach > byModel || alone.spread > WILDER_RATIO * spread);
  const highAlone = isWilder
    ? at(alone.middle + alone.spread * toleranceFactor(count, SHARE_BELOW_E, HIGH_CONFIDENCE_SHARE))
    : Number.NEGATIVE_INFINITY;
  const value = Math.max(byModel, seenToReach);
  return {
    middle: at(-shift),
    value,
    rank: drawn ? value : at(above - UNDRAWN_RANK_MARGIN),
    low: at(above - INTERVAL_QUANTILE * error),
    high: Math.max(at(above + INTERVAL_QUANTILE * error), value, highAlone),
    draws: count,
  };
}

/**
 * How far an event's draws reach above their median, without a model: as far as all draws scatter, but no more than `SKEW_RATIO` times
 * as far as the draws above the median do. A few falls that pull less than the rest say nothing about harder falls.
 */
function drawsAlone({ each }: Differences): { readonly middle: number; readonly spread: number } {
  const rising = [...each].sort((a, b) => a - b);
  const half = Math.floor(rising.length / 2);
  const middle = (rising[half]! + rising[rising.length - 1 - half]!) / 2;
  const squares = (some: readonly number[], from: number) => some.reduce((sum, one) => sum + (one - from) ** 2, 0);
  const all = Math.sqrt(squares(each, 0) / (each.length - 1));
  const above = Math.sqrt(squares(rising.slice(-half), middle) / half);
  return { middle, spread: Math.max(above, Math.min(all, SKEW_RATIO * above)) };
}

/**
 * What the draws themselves say of their 95 % value at 75 % confidence, whatever they are distributed like: an order statistic (S. S.
 * Wilks 1941), the largest one where they are few. A catch that now and then pulls a second time, harder, has a longer tail than the
 * logarithm's.
 */
function seenBound(values: readonly number[]): number {
  const falling = [...values].sort((a, b) => b - a);
  return falling[(lowerBoundRank(values.length, SHARE_BELOW_E, CONFIDENCE_SHARE) ?? 1) - 1]!;
}
