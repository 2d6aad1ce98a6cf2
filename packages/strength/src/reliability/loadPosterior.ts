/**
 * The loads of parts as learnt from draws of a fall: ln load = middle + slopes · deviates + chance, with the uncertainty of
 * each of these.
 *
 * The deviates are of mean 0 and variance 1. Given the ratio of the variance of slopes to that of chance, the posterior is
 * normal-inverse-gamma (A. Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, 14.2); the ratio is learnt from the draws, or
 * the squares of many uncertain slopes would sum to too much (C. Stein, Annals of Mathematical Statistics 30 (1959) 877–880).
 */
import { choleskyFactor, choleskyRoot, choleskySolve, normalCdf, type Random } from "@secondline/statistics";
import type { ReliabilityPart } from "./reliabilityPart.ts";

export interface LoadDraws {
  /** One row per draw, all equally long; of mean 0 and variance 1, and 0 for an input that does not scatter. */
  readonly deviates: readonly (readonly number[])[];
  /** Load of every part, one row per draw [N]. */
  readonly loads: readonly (readonly number[])[];
}

/** Loads of all parts by one draw from the posterior. */
export interface LoadsBelieved {
  /** Middle of ln load [ln N]. */
  readonly middles: Float64Array;
  /** For every part, the slope of ln load over each deviate [-]. */
  readonly slopes: readonly Float64Array[];
  /** Standard deviation of the chance part of ln load [-]. */
  readonly chances: Float64Array;
}

export interface LoadPosterior {
  /** For each part, the draws that load it enough to count. */
  readonly loaded: readonly (readonly boolean[])[];
  /** Correlation of the chance parts between parts of the rig. */
  readonly correlation: readonly (readonly number[])[];
  readonly draw: (random: Random) => LoadsBelieved;
}

/** A part that holds this many times its load counts as not loaded: the little whips of a slack line follow no rule [-]. */
const UNLOADED_RATIO = 20;
/** Assumed before any draw: the chance scatter of ln load, and the whole scatter of a part that only some draws load [-]. */
const PRIOR_CHANCE = 0.08;
const PRIOR_SCATTER = 0.2;
/** Weight of that assumption, in draws [-]. */
const PRIOR_DRAWS = 2;
/**
 * Ratios of the variance of a slope to that of chance, the usual ratio, and the standard deviation of ln ratio about it before
 * any draw [-]. Assumed; the smallest ratios leave nearly all scatter to chance.
 */
const VARIANCE_RATIOS = [0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 1, 3, 10];
const USUAL_RATIO = 0.5;
const RATIO_SPREAD = 2.5;

/** One ratio of slopes to chance, for all parts. */
interface Ratio {
  readonly root: readonly Float64Array[];
  /** ln of the part of the likelihood that is common to all parts. */
  readonly log: number;
}

/** The posterior of one part, given a ratio. */
interface Given {
  /** Chance of this ratio and all before it. */
  readonly upTo: number;
  readonly slopes: Float64Array;
  readonly squares: number;
  readonly root: readonly Float64Array[];
}

interface PartPosterior {
  readonly mean: number;
  readonly count: number;
  readonly freedom: number;
  readonly given: readonly Given[];
  /** Residual of every draw; 0 if the draw does not load the part. */
  readonly residuals: Float64Array;
}

const mean = (values: ArrayLike<number>) => Array.from(values).reduce((sum, value) => sum + value, 0) / values.length;

export function loadPosterior(parts: readonly ReliabilityPart[], { deviates, loads }: LoadDraws): LoadPosterior {
  const inputs = deviates[0]?.length ?? 0;
  const active = Array.from({ length: inputs }, (_, k) => k).filter((k) => deviates.some((row) => row[k] !== 0));
  const middle = active.map((k) => mean(deviates.map((row) => row[k]!)));
  const centred = deviates.map((row) => active.map((k, a) => row[k]! - middle[a]!));
  const ratios = ratiosOf(centred, active.length);
  const loaded = parts.map(({ median }, i) => loads.map((row) => row[i]! > median / UNLOADED_RATIO));
  const found = parts.map((_, i) => {
    const logs = loads.map((row) => Math.log(Math.max(1, row[i]!)));
    return loaded[i]!.every(Boolean) ? regression(logs, centred, ratios) : someLoad(logs, loaded[i]!);
  });
  const correlation = shrunkCorrelations(found.map(({ residuals }) => residuals));
  const root = choleskyRoot(correlation);
  const count = parts.length;
  /** Standard normal deviates, correlated like the chance parts. */
  function* together(random: Random): Generator<Float64Array, never> {
    const free = new Float64Array(count);
    for (;;) {
      for (let i = 0; i < count; i++) free[i] = random.normal();
      yield Float64Array.from(root, (row, i) => {
        let sum = 0;
        for (let k = 0; k <= i; k++) sum += row[k]! * free[k]!;
        return sum;
      });
    }
  }
  return {
    loaded,
    correlation,
    draw: (random) => {
      const source = together(random);
      const next = () => source.next().value;
      const choice = next();
      const given = found.map((one, i) => {
        const at = normalCdf(choice[i]!);
        return one.given.find(({ upTo }) => at <= upTo) ?? one.given.at(-1)!;
      });
      const chances = chancesOf(found, given, next);
      const noise = active.map(next);
      const slopes = found.map((_, i) => {
        const all = new Float64Array(inputs);
        if (given[i]!.slopes.length === 0) return all;
        const off = backSolved(
          given[i]!.root,
          noise.map((row) => row[i]!),
        );
        active.forEach((k, a) => {
          all[k] = given[i]!.slopes[a]! + chances[i]! * off[a]!;
        });
        return all;
      });
      const last = next();
      const middles = Float64Array.from(found, (one, i) => {
        const shift = active.reduce((sum, k, a) => sum + slopes[i]![k]! * middle[a]!, 0);
        return one.mean - shift + (chances[i]! * last[i]!) / Math.sqrt(Math.max(1, one.count));
      });
      return { middles, slopes, chances };
    },
  };
}

/** Squares over a chi-square of these degrees of freedom, of all parts together. */
function chancesOf(found: readonly PartPosterior[], given: readonly Given[], next: () => Float64Array): Float64Array {
  const most = Math.max(0, ...found.map(({ freedom }) => freedom));
  const sums = new Float64Array(found.length);
  for (let k = 0; k < most; k++) {
    const row = next();
    found.forEach(({ freedom }, i) => {
      if (k < freedom) sums[i]! += row[i]! ** 2;
    });
  }
  return sums.map((sum, i) => Math.sqrt(given[i]!.squares / sum));
}

function ratiosOf(centred: readonly (readonly number[])[], inputs: number): readonly Ratio[] {
  if (inputs === 0) return [];
  return VARIANCE_RATIOS.map((ratio) => {
    const precision = Array.from({ length: inputs }, (_, a) =>
      Float64Array.from({ length: inputs }, (__, b) =>
        centred.reduce((sum, row) => sum + row[a]! * row[b]!, a === b ? 1 / ratio : 0),
      ),
    );
    const root = choleskyFactor(precision);
    const before = -0.5 * (Math.log(ratio / USUAL_RATIO) / RATIO_SPREAD) ** 2;
    const determinant = root.reduce((sum, row, a) => sum + Math.log(row[a]!), 0);
    return { root, log: before - (inputs / 2) * Math.log(ratio) - determinant };
  });
}

/** For a part that every draw loads. */
function regression(
  logs: readonly number[],
  centred: readonly (readonly number[])[],
  ratios: readonly Ratio[],
): PartPosterior {
  if (ratios.length === 0) return withoutSlopes(logs, PRIOR_CHANCE);
  const middle = mean(logs);
  const count = logs.length;
  const freedom = PRIOR_DRAWS + count - 1;
  const right = centred[0]!.map((_, a) => logs.reduce((sum, y, r) => sum + (y - middle) * centred[r]![a]!, 0));
  const whole = logs.reduce((sum, y) => sum + (y - middle) ** 2, PRIOR_DRAWS * PRIOR_CHANCE ** 2);
  const each = ratios.map(({ root, log }) => {
    const slopes = choleskySolve(root, right);
    const squares = whole - slopes.reduce((sum, slope, a) => sum + slope * right[a]!, 0);
    return { root, slopes, squares, log: log - (freedom / 2) * Math.log(squares) };
  });
  const most = Math.max(...each.map(({ log }) => log));
  const weights = each.map(({ log }) => Math.exp(log - most));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let upTo = 0;
  const given = each.map(({ log: _, ...one }, g): Given => {
    upTo += weights[g]! / total;
    return { ...one, upTo };
  });
  const guess = centred[0]!.map((_, a) =>
    each.reduce((sum, { slopes }, g) => sum + (weights[g]! * slopes[a]!) / total, 0),
  );
  const residuals = Float64Array.from(logs, (y, r) =>
    guess.reduce((left, slope, a) => left - slope * centred[r]![a]!, y - middle),
  );
  return { mean: middle, count, freedom, given, residuals };
}

function withoutSlopes(logs: readonly number[], scatter: number): PartPosterior {
  const middle = logs.length > 0 ? mean(logs) : 0;
  const residuals = Float64Array.from(logs, (y) => y - middle);
  const squares = residuals.reduce((sum, one) => sum + one ** 2, PRIOR_DRAWS * scatter ** 2);
  const given = [{ upTo: 1, slopes: new Float64Array(0), squares, root: [] }];
  return { mean: middle, count: logs.length, freedom: PRIOR_DRAWS + Math.max(0, logs.length - 1), given, residuals };
}

/**
 * For a part that only some draws load. Their deviates are no longer those of all draws, so all of the scatter counts as
 * chance.
 */
function someLoad(logs: readonly number[], loaded: readonly boolean[]): PartPosterior {
  const found = withoutSlopes(
    logs.filter((_, r) => loaded[r]),
    PRIOR_SCATTER,
  );
  let next = 0;
  return { ...found, residuals: Float64Array.from(loaded, (is) => (is ? found.residuals[next++]! : 0)) };
}

/**
 * Correlations, drawn towards 0 by the amount that few draws leave open: J. Schäfer & K. Strimmer, Statistical Applications in
 * Genetics and Molecular Biology 4 (2005), no. 32.
 */
function shrunkCorrelations(residuals: readonly Float64Array[]): number[][] {
  const lengths = residuals.map((row) => Math.sqrt(row.reduce((sum, one) => sum + one ** 2, 0)));
  const raw = residuals.map((a, i) =>
    residuals.map((b, j) => {
      if (i === j) return 1;
      const product = lengths[i]! * lengths[j]!;
      return product > 0 ? a.reduce((sum, one, r) => sum + one * b[r]!, 0) / product : 0;
    }),
  );
  const draws = residuals[0]?.length ?? 0;
  let [open, seen] = [0, 0];
  raw.forEach((row, i) => {
    for (let j = 0; j < i; j++) {
      if (row[j] === 0) continue;
      open += (1 - row[j]! ** 2) ** 2 / Math.max(1, draws - 1);
      seen += row[j]! ** 2;
    }
  });
  const towardsNone = seen > 0 ? Math.min(1, open / seen) : 1;
  return raw.map((row, i) => row.map((one, j) => (i === j ? 1 : (1 - towardsNone) * one)));
}

/** x with Lᵀ·x = z. */
function backSolved(root: readonly Float64Array[], z: readonly number[]): Float64Array {
  const x = Float64Array.from(z);
  for (let i = x.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < x.length; k++) x[i]! -= root[k]![i]! * x[k]!;
    x[i]! /= root[i]![i]!;
  }
  return x;
}
