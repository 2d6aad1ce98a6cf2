/** A wear of a stock by its tests and the built-in curve together, over the whole range of doses. */

import { Z95 } from "../derating/lognormal.ts";
import type { StockModel } from "./stockModel.ts";
import { builtInAt, lastDose, type WearId } from "./wearFactors.ts";

export interface WearAt {
  /** Central value [-]. */
  readonly value: number;
  /** Central value over the built-in one [-]. */
  readonly over: number;
  /** Weight of every coefficient of the model in the logarithm. */
  readonly weight: (coefficient: number) => number;
  /** Variance of the logarithm that is the factor's own: the scatter of samples, and the part that no test reaches [-]. */
  readonly own: number;
  /** Share of the prior's variance that the tests leave [-]. */
  readonly left: number;
  /** The tests would make the wear a gain, so the curve is held at no loss. */
  readonly gain: boolean;
}

export interface LearntWear {
  readonly id: WearId;
  readonly at: (dose: number) => WearAt;
}

/** Points of the curve, densest at small doses where it is steepest [-]. */
const CURVE_POINTS = 240;

interface CurvePoint {
  readonly dose: number;
  /** Logarithm of the central value, and its 5 % value: neither rises with the dose. */
  readonly log: number;
  readonly low: number;
  readonly gain: boolean;
}

export function learntWear(model: StockModel, id: WearId): LearntWear {
  const last = lastDose(model.stock, id);
  const knots = model.wears.get(id)!;
  const even = Array.from({ length: CURVE_POINTS + 1 }, (_, i) => last * (i / CURVE_POINTS) ** 2);
  const doses = last === 0 ? [0] : [...new Set([...even, ...knots.doses])].sort((a, b) => a - b);
  const curve: CurvePoint[] = [];
  for (const dose of doses) {
    const { mean, deviation, builtIn } = wearPosterior(model, id, dose);
    const before = curve.at(-1);
    const free = builtIn + mean;
    const log = Math.min(0, free, before?.log ?? 0);
    const low = Math.min(log - Z95 * deviation, before?.low ?? 0);
    // A gain of less than a hundredth is scatter.
    curve.push({ dose, log, low, gain: free > 0.01 || (before?.gain ?? false) });
  }
  return { id, at: (dose) => wearAt(model, id, curve, Math.min(last, Math.max(0, dose))) };
}

function wearAt(model: StockModel, id: WearId, curve: readonly CurvePoint[], dose: number): WearAt {
  let i = curve.findIndex((point) => point.dose >= dose);
  if (i < 0) i = curve.length - 1;
  const [a, b] = [curve[Math.max(0, i - 1)]!, curve[i]!];
  const share = b.dose === a.dose ? 1 : (dose - a.dose) / (b.dose - a.dose);
  const mix = (of: (point: CurvePoint) => number) => (1 - share) * of(a) + share * of(b);
  const log = mix((point) => point.log);
  const { common, own, open, prior, weight, builtIn } = wearPosterior(model, id, dose);
  // The 5 % value does not rise with the dose either: the scatter is widened until it does not.
  const needed = ((log - mix((point) => point.low)) / Z95) ** 2;
  return {
    value: Math.exp(log),
    over: Math.exp(log - builtIn),
    weight,
    own: Math.max(own, needed - common),
    left: prior > 0 ? (common + open) / prior : 1,
    gain: b.gain,
  };
}

/** Mean and variance of a wear's deviation from the built-in curve at a dose: Brownian over the prior's variance. */
export function wearPosterior(model: StockModel, id: WearId, dose: number) {
  const { doses, variances, steps, scatter, wide } = model.wears.get(id)!;
  const v = builtInAt(model.stock, { id, dose });
  const shares = steps.map((_, k) => {
    const from = variances[k - 1] ?? 0;
    const step = variances[k]! - from;
    if (dose >= doses[k]!) return 1;
    return step > 0 ? Math.min(1, Math.max(0, (v.common - from) / step)) : 0;
  });
  const weights = new Map(steps.map((coefficient, k) => [coefficient, shares[k]!]));
  const weight = (coefficient: number) => weights.get(coefficient) ?? 0;
  let [mean, common] = [0, 0];
  steps.forEach((a, k) => {
    mean += shares[k]! * model.means[a]!;
    steps.forEach((b, j) => {
      common += shares[k]! * shares[j]! * model.covariance[a]![b]!;
    });
  });
  for (const shortfall of model.shortfalls) {
    if (shortfall.id !== id) continue;
    // A shortfall at a dose holds from there on, and in proportion to the spread below it.
    const at = builtInAt(model.stock, shortfall).common;
    mean -= shortfall.by * (at > 0 ? Math.min(1, Math.sqrt(v.common / at)) : 1);
  }
  // The variance left open by a step between two tested doses, or beyond the last one.
  let open = Math.max(0, v.common - (variances.at(-1) ?? 0));
  shares.forEach((share, k) => {
    if (share > 0 && share < 1) open += share * (1 - share) * (variances[k]! - (variances[k - 1] ?? 0));
  });
  const own = open + v.own * scatter * wide * wide;
  return {
    mean,
    common,
    own,
    open,
    prior: v.common,
    weight,
    deviation: Math.sqrt(common + own),
    builtIn: v.log,
  };
}
