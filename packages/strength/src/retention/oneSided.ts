/**
 * The tests of a stock in one-sided form: the strength of a state is a sum in which no test has a weight below 0. So a lower
 * test never raises the strength. See STATISTICS.md, "A lower test never raises a strength".
 */

import { type Coefficient, regressionGain } from "@secondline/statistics";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { beyondBound, isBelow } from "./bounded.ts";
import { hasBounds, type StateTests, type TestGroup } from "./stateTests.ts";
import type { WearKnots } from "./stockModel.ts";
import { BAND_DEVIATIONS } from "./stockScatter.ts";
import { nearestDose, type WearDose, type WearId } from "./wearFactors.ts";

/** Most strength of a tested state: the mean of its tests and an error, over the built-in value, in the logarithm [-]. */
export interface TestedMost {
  readonly doses: readonly WearDose[];
  readonly most: number;
}

export interface OneSided {
  /** Weight of every group of like tests in every coefficient. */
  readonly gain: readonly Float64Array[];
  /** Mean of every group over the built-in value, in the logarithm [-]. */
  readonly means: Float64Array;
  /**
   * Value that stands in for every group where the group would count against a state: on the strong side of the built-in
   * value [-].
   */
  readonly references: Float64Array;
  readonly most: readonly TestedMost[];
}

/**
 * Most rounds in which bounds are replaced by the value to be expected beyond them. Few rounds are enough where the bounds lift
 * that value. Where a piece broke below a load, all rounds are made that it takes: too few would leave the value too high [-].
 */
const MOST_ROUNDS = 30;
const MOST_ROUNDS_BELOW = 3000;

/**
 * A reference lies above the built-in value by this many standard deviations. The higher it lies, the lower are states that
 * nobody tested. With 0 such states would profit from good tests of another wear [-].
 */
const STRONG_REFERENCE_DEVIATIONS = 1;

const referenceOf = ({ members }: TestGroup) =>
  STRONG_REFERENCE_DEVIATIONS * Math.sqrt(Math.max(...members.map(({ common }) => common)));

export function oneSided(
  groups: readonly TestGroup[],
  coefficients: readonly Coefficient[],
  wears: ReadonlyMap<WearId, WearKnots>,
  allowance: { readonly scatter: number; readonly batch: number },
): OneSided {
  const rows = groups.map((group) => ({ of: group.of, assumed: 1 / precisionOf(group) }));
  const gain = regressionGain(coefficients, rows);
  const references = Float64Array.from(groups, referenceOf);
  const { means, centres } = settledMeans(groups, gain, references);
  return { gain, means, references, most: mostOf(groups, centres, wears, allowance) };
}

/** Smaller changes of a logarithm are rounding [-]. */
const LEAST_CHANGE = 1e-13;

/**
 * Mean of every group. The value beyond a bound is expected from a centre that no lower test raises: from the built-in one,
 * then from that of the tests, over and over. Only groups with bounds move; the share of all others in a centre is summed once.
 */
function settledMeans(groups: readonly TestGroup[], gain: readonly Float64Array[], references: Float64Array) {
  const centres = new Float64Array(groups.length);
  const meanOf = (g: number) => {
    const group = groups[g]!;
    const bounds = group.members.reduce((total, one) => total + sumOf(beyond(one, centres[g]!)) / one.assumed, 0);
    return (group.exactSum + bounds) / precisionOf(group);
  };
  const means = Float64Array.from(groups, (_, g) => meanOf(g));
  const moving = groups.flatMap((group, g) => (hasBounds(group) ? [g] : []));
  const still = means.slice();
  for (const g of moving) still[g] = 0;
  const asking = moving.map((g) => {
    const weights = weightsOf(gain, groups[g]!.of);
    return {
      g,
      rest: oneSidedSum(weights, still, references),
      shares: moving.map((h) => Math.max(0, weights[h]!)),
    };
  });
  let most = asking.length > 0 ? Number.POSITIVE_INFINITY : 0;
  const rounds = groups.some(({ members }) => members.some(({ bounds }) => bounds.some(isBelow)))
    ? MOST_ROUNDS_BELOW
    : MOST_ROUNDS;
  for (let round = 0; round < rounds && most > LEAST_CHANGE; round++) {
    most = 0;
    for (const { g, rest, shares } of asking) {
      const centre = shares.reduce((sum, share, k) => sum + share * means[moving[k]!]!, rest);
      most = Math.max(most, Math.abs(centre - centres[g]!));
      centres[g] = centre;
    }
    for (const g of moving) means[g] = meanOf(g);
  }
  return { means, centres };
}

/** Sum in which a test that would count against a state stands at a fixed reference instead, whatever it held. */
export function oneSidedSum(weights: Float64Array, means: Float64Array, references: Float64Array): number {
  let sum = 0;
  for (let r = 0; r < means.length; r++) sum += weights[r]! * (weights[r]! > 0 ? means[r]! : references[r]!);
  return sum;
}

/** `oneSidedSum` of the weights `outer` + `inner` − `less`, without a row of their own: a grid has thousands of nodes. */
export function tiedSum(
  outer: Float64Array,
  inner: Float64Array | undefined,
  less: Float64Array | undefined,
  means: Float64Array,
  references: Float64Array,
): number {
  let sum = 0;
  for (let r = 0; r < means.length; r++) {
    const weight = outer[r]! + (inner === undefined ? 0 : inner[r]!) - (less === undefined ? 0 : less[r]!);
    sum += weight * (weight > 0 ? means[r]! : references[r]!);
  }
  return sum;
}

/** Weight of every group of tests in a sum of coefficients. */
export function groupWeights({ gain, means }: OneSided, steps: Float64Array): Float64Array {
  const rows = new Float64Array(means.length);
  steps.forEach((share, k) => {
    if (share !== 0) for (let r = 0; r < rows.length; r++) rows[r]! += share * gain[k]![r]!;
  });
  return rows;
}

export function weightsOf(gain: readonly Float64Array[], of: readonly number[]): Float64Array {
  const weights = new Float64Array(gain[0]!.length);
  for (const i of of) for (let r = 0; r < weights.length; r++) weights[r]! += gain[i]![r]!;
  return weights;
}

const precisionOf = ({ exactPrecision, boundPrecision }: TestGroup) => exactPrecision + boundPrecision;

const sumOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

function beyond(
  { bounds, assumed, offset }: StateTests,
  centre: number,
  counts: (test: BreakTest) => boolean = () => true,
): number[] {
  return bounds.filter(counts).map((test) => beyondBound(test, centre, Math.sqrt(assumed), offset).mean);
}

/** Tests of one state, of whatever batch: logarithms of their values over the built-in value. */
interface TestedState {
  readonly doses: readonly WearDose[];
  /** Breaking loads, and the values to be expected of pieces that did not break. */
  readonly values: number[];
  /** The values to be expected of pieces that broke below a load. */
  readonly below: number[];
  readonly batches: Set<string>;
  broke: number;
  variance: number;
  common: number;
}

/**
 * Limits of the tested states of which a piece broke. Below the built-in band the mean governs as it is, else with its error.
 */
function mostOf(
  groups: readonly TestGroup[],
  centres: Float64Array,
  wears: ReadonlyMap<WearId, WearKnots>,
  { scatter, batch }: { readonly scatter: number; readonly batch: number },
): TestedMost[] {
  return testedStates(groups, centres, wears).flatMap(({ doses, broke, variance, batches, common, ...one }) => {
    if (broke === 0) return [];
    const most = meansOf(one).map(({ mean, count }) => {
      const ofMean = variance / count + (batches.size > 1 ? batch / batches.size : 0);
      const outside = mean < -BAND_DEVIATIONS * Math.sqrt(common + scatter + ofMean);
      return outside ? mean : mean + Math.sqrt(ofMean);
    });
    return [{ doses, most: Math.min(...most) }];
  });
}

/**
 * Means of a state's tests: without pieces that broke below a load, with the lowest such piece, the two lowest and so on. The
 * least of these counts, so that no such piece makes another one count for less.
 */
function meansOf({ values, below }: Pick<TestedState, "values" | "below">) {
  const sorted = [...below].sort((a, b) => a - b);
  let sum = sumOf(values);
  const without = values.length === 0 ? [] : [{ mean: sum / values.length, count: values.length }];
  const withSome = sorted.map((value, k) => {
    sum += value;
    return { mean: sum / (values.length + k + 1), count: values.length === 0 ? k + 1 : values.length };
  });
  return [...without, ...withSome];
}

function testedStates(
  groups: readonly TestGroup[],
  centres: Float64Array,
  wears: ReadonlyMap<WearId, WearKnots>,
): readonly TestedState[] {
  const states = new Map<string, TestedState>();
  groups.forEach(({ members, of }, g) => {
    // Groups with the same steps of every wear are one state, of whatever batch.
    const [level, _batch, ...steps] = of;
    const key = [level, ...steps].join();
    const state = states.get(key) ?? {
      doses: members[0]!.state.doses.map(({ id, dose }) => nearest(wears.get(id)!, dose)),
      values: [],
      below: [],
      batches: new Set<string>(),
      broke: 0,
      variance: 0,
      common: 0,
    };
    states.set(key, state);
    for (const one of members) {
      state.values.push(...one.exact, ...beyond(one, centres[g]!, (test) => !isBelow(test)));
      const below = beyond(one, centres[g]!, isBelow);
      state.below.push(...below);
      state.broke += one.exact.length + below.length;
      state.variance = Math.max(state.variance, one.assumed);
      state.common = Math.max(state.common, one.common);
      state.batches.add(one.state.batch);
    }
  });
  return [...states.values()];
}

const nearest = ({ id, doses }: WearKnots, dose: number): WearDose => ({ id, dose: doses[nearestDose(doses, dose)]! });
