/**
 * The tests of a stock in one-sided form: what a state holds by them is a sum in which no test has a weight below 0, so that a
 * lower test never raises it. See STATISTICS.md, "A lower test never raises a strength".
 */
import { beyondBound } from "./bounded.ts";
import type { StockState, WearKnots } from "./stockModel.ts";
import { type Coefficient, regressionGain } from "./tiedRegression.ts";
import { nearestDose, type WearDose, type WearId } from "./wearFactors.ts";

/** The tests of a state as the regression sees them: logarithms over what the built-in factors leave of the rated strength. */
export interface ToldState {
  readonly state: StockState;
  /** Coefficients of the regression that it is a sum of. */
  readonly of: readonly number[];
  /** What the built-in factors leave open of it, as variance. */
  readonly common: number;
  /** Breaking loads, as they were, and their mean as far as they are believed. */
  readonly exact: readonly number[];
  readonly believed: number;
  readonly bounds: StockState["tests"];
  /** Variance with which one test is weighed. */
  readonly assumed: number;
  /** ln of what the built-in factors leave [N]. */
  readonly offset: number;
}

/** What a tested state holds at most: the mean of its tests and an error; over what is built in, in the logarithm [-]. */
export interface TestedMost {
  readonly doses: readonly WearDose[];
  readonly most: number;
}

export interface OneSided {
  /** Weight of every group of like tests in every coefficient. */
  readonly gain: readonly Float64Array[];
  /** Mean of every group over what is built in, in the logarithm [-]. */
  readonly means: Float64Array;
  /** What every group stands at where it would count against a state: on the strong side of what is built in [-]. */
  readonly references: Float64Array;
  readonly most: readonly TestedMost[];
}

/** Standard deviations that leave 19 of 20 means inside [-]. */
const OUTSIDE = 1.96;
/** Rounds in which bounds are replaced by what is to be expected beyond them. */
const ROUNDS = 30;

/**
 * A reference is strong by so many standard deviations of what is built in: the higher it stands, the lower are states that nobody
 * tested; with 0 those would profit from good tests of another wear [-].
 */
const STRONG = 1;

const referenceOf = (told: readonly ToldState[]) => STRONG * Math.sqrt(Math.max(...told.map(({ common }) => common)));

interface Group {
  readonly of: readonly number[];
  readonly told: ToldState[];
  precision: number;
}

export function oneSided(
  told: readonly ToldState[],
  coefficients: readonly Coefficient[],
  wears: ReadonlyMap<WearId, WearKnots>,
  allowance: { readonly scatter: number; readonly batch: number },
): OneSided {
  const groups = groupsOf(told);
  const rows = groups.map(({ of, precision }) => ({ of, assumed: 1 / precision }));
  const gain = regressionGain(coefficients, rows);
  const references = Float64Array.from(groups, ({ told }) => referenceOf(told));
  // What lies beyond a bound is expected from a centre that no lower test raises: the built-in one, then that of the tests.
  const centres = new Float64Array(groups.length);
  let means = groupMeans(groups, centres);
  // Only groups with bounds ask for their centre; their weights are the same in every round.
  const asking = groups.flatMap(({ told, of }, g) =>
    told.some(({ bounds }) => bounds.length > 0) ? [{ g, weights: weightsOf(gain, of) }] : [],
  );
  for (let round = 0; round < ROUNDS && asking.length > 0; round++) {
    for (const { g, weights } of asking) centres[g] = oneSidedSum(weights, means, references);
    means = groupMeans(groups, centres);
  }
  return { gain, means, references, most: mostOf(groups, centres, wears, allowance) };
}

/** Sum in which a test that would count against a state stands at a fixed reference instead, whatever it held. */
export function oneSidedSum(weights: Float64Array, means: Float64Array, references: Float64Array): number {
  let sum = 0;
  for (let r = 0; r < means.length; r++) sum += weights[r]! * (weights[r]! > 0 ? means[r]! : references[r]!);
  return sum;
}

export function weightsOf(gain: readonly Float64Array[], of: readonly number[]): Float64Array {
  const weights = new Float64Array(gain[0]!.length);
  for (const i of of) for (let r = 0; r < weights.length; r++) weights[r]! += gain[i]![r]!;
  return weights;
}

function groupsOf(told: readonly ToldState[]): Group[] {
  const groups = new Map<string, Group>();
  for (const one of told) {
    const key = one.of.join();
    const group = groups.get(key) ?? { of: one.of, told: [], precision: 0 };
    group.told.push(one);
    group.precision += (one.exact.length + one.bounds.length) / one.assumed;
    groups.set(key, group);
  }
  return [...groups.values()];
}

function groupMeans(groups: readonly Group[], centres: Float64Array): Float64Array {
  return Float64Array.from(groups, ({ told, precision }, g) => {
    const sum = told.reduce((total, one) => {
      return total + (one.exact.length * one.believed + sumOf(beyond(one, centres[g]!))) / one.assumed;
    }, 0);
    return sum / precision;
  });
}

const sumOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

function beyond({ bounds, assumed, offset }: ToldState, centre: number): number[] {
  return bounds.map((test) => beyondBound(test, centre, Math.sqrt(assumed), offset).mean);
}

/** Tested states, whatever their batch. Below the band of what is built in their mean governs as it is, else with its error. */
function mostOf(
  groups: readonly Group[],
  centres: Float64Array,
  wears: ReadonlyMap<WearId, WearKnots>,
  { scatter, batch }: { readonly scatter: number; readonly batch: number },
): TestedMost[] {
  const states = new Map<
    string,
    { doses: WearDose[]; values: number[]; broke: number; variance: number; batches: Set<string>; common: number }
  >();
  groups.forEach(({ told }, g) => {
    for (const one of told) {
      const doses = one.state.doses.map(({ id, dose }) => {
        const known = wears.get(id)!.doses;
        return { id, dose: known[nearestDose(known, dose)]! };
      });
      const key = JSON.stringify(doses);
      const state = states.get(key) ?? { doses, values: [], broke: 0, variance: 0, batches: new Set(), common: 0 };
      state.values.push(...one.exact, ...beyond(one, centres[g]!));
      state.broke += one.exact.length;
      state.variance = Math.max(state.variance, one.assumed);
      state.common = Math.max(state.common, one.common);
      state.batches.add(one.state.batch);
      states.set(key, state);
    }
  });
  return [...states.values()].flatMap(({ doses, values, broke, variance, batches, common }): TestedMost[] => {
    if (broke === 0) return [];
    const mean = sumOf(values) / values.length;
    const ofMean = variance / values.length + (batches.size > 1 ? batch / batches.size : 0);
    const outside = mean < -OUTSIDE * Math.sqrt(common + scatter + ofMean);
    return [{ doses, most: outside ? mean : mean + Math.sqrt(ofMean) }];
  });
}
