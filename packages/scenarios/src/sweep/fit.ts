/**
 * A smooth curve of what 95 % of draws stay under, through the draws of all points of a sweep together.
 *
 * y = ln of a quantity (or the quantity itself over a scale) = φ(x)·c + u·b + ε. φ are a few smooth functions of what is swept, the u
 * the deviates of what was drawn, ε is chance. c is free; b has the same prior as in `levels.ts`, and so has the size of ε; the 95 %
 * value and its interval are made of them in the same way. So a point with eight draws rests on those of its neighbours too.
 *
 * Where the curve misses the points by more than chance does (the mean square of their means about it over the pure chance within
 * them, at four degrees of prior freedom), its own error is widened by that ratio: a law that the few functions do not follow gives a
 * wider interval, not a wrong one. Method of the lack-of-fit test, N. R. Draper & H. Smith, Applied Regression Analysis (1998), 2.1.
 *
 * The curve knows one middle and one scatter that is like the normal law's. What the draws of a point say beside it, such as a catch that
 * now and then pulls a second time, is put on it by `lift.ts`.
 */
import { choleskyFactor, choleskyInverse } from "@secondline/statistics";
import {
  CONFIDENCE_QUANTILE,
  INTERVAL_QUANTILE,
  LOG_RANGE,
  PRIOR_CHANCE,
  PRIOR_DRAWS,
  PRIOR_SLOPE,
  QUANTILE_BELOW_E,
} from "../scatter/levels.ts";

export interface FitRow {
  /** Index of the point. */
  readonly point: number;
  /** φ at that point. */
  readonly basis: readonly number[];
  readonly value: number;
  readonly deviates: readonly number[];
}

/** A quantity's 95 % value at 75 % confidence, and the 95 % interval of that 95 % value. */
export interface CurveLevel {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface Fitted {
  readonly at: (basis: readonly number[]) => CurveLevel;
  /** How many times more than by chance the points lie off the curve, in squares; 1: no more [-]. */
  readonly misfit: number;
  readonly draws: number;
}

/** Keeps what no row says anything of from having no answer [-]. */
const LEAST_PRECISION = 1e-9;
/** Weight of "the curve fits" against the few points, in degrees of freedom [-]. */
const FIT_WEIGHT = 4;

/** `scale`: what differences are told in where the quantity may be near 0, such as a height; default: logarithms where they go. */
export function fitCurve(rows: readonly FitRow[], scale?: number): Fitted {
  const log = scale === undefined && tellsInLogs(rows);
  const unit = log ? 1 : (scale ?? meanSize(rows));
  const told = rows.map(({ value }) => (log ? Math.log(value) : value / unit));
  const smooth = rows[0]!.basis.length;
  const inputs = Math.max(...rows.map(({ deviates }) => deviates.length));
  const size = smooth + inputs;
  const full = rows.map(({ basis, deviates }) => [
    ...basis,
    ...Array.from({ length: inputs }, (_, k) => deviates[k] ?? 0),
  ]);
  const moment = Array.from({ length: size }, (_, i) => {
    const row = new Float64Array(size);
    row[i] = i < smooth ? LEAST_PRECISION : (PRIOR_CHANCE / PRIOR_SLOPE) ** 2;
    return row;
  });
  const right = new Float64Array(size);
  full.forEach((row, r) => {
    for (let a = 0; a < size; a++) {
      if (row[a] === 0) continue;
      right[a]! += row[a]! * told[r]!;
      for (let b = 0; b < size; b++) moment[a]![b]! += row[a]! * row[b]!;
    }
  });
  const inverse = choleskyInverse(choleskyFactor(moment));
  const found = inverse.map((row) => row.reduce((sum, one, k) => sum + one * right[k]!, 0));
  const squares = told.reduce((sum, y) => sum + y * y, 0);
  const explained = found.reduce((sum, one, k) => sum + one * right[k]!, 0);
  const freedom = PRIOR_DRAWS + Math.max(0, rows.length - smooth);
  const chance = (PRIOR_DRAWS * PRIOR_CHANCE ** 2 + Math.max(0, squares - explained)) / freedom;
  const left = full.map((row, r) => told[r]! - row.reduce((sum, x, k) => sum + x * found[k]!, 0));
  const misfit = misfitOf(rows, left, smooth);
  // Only what was drawn scatters.
  const slopes = Array.from({ length: inputs }, (_, k) => k + smooth).filter((k) => full.some((row) => row[k] !== 0));
  const going = slopes.reduce((sum, k) => sum + found[k]! ** 2 + chance * inverse[k]![k]!, 0);
  const spread = Math.sqrt(going + chance);
  const ofSlopes = chance * quadratic(slopes, inverse, found);
  const ofSpread = (4 * ofSlopes + (2 * chance ** 2) / freedom) / (4 * spread ** 2);
  return {
    misfit,
    draws: rows.length,
    at(basis) {
      const middle = basis.reduce((sum, x, k) => sum + x * found[k]!, 0);
      const indices = basis.map((_, k) => k);
      const ofMiddle = chance * misfit * quadratic(indices, inverse, basis);
      const error = Math.sqrt(ofMiddle + QUANTILE_BELOW_E ** 2 * ofSpread);
      const back = (y: number) => (log ? Math.exp(y) : y * unit);
      const above = middle + QUANTILE_BELOW_E * spread;
      return {
        value: back(above + CONFIDENCE_QUANTILE * error),
        low: back(above - INTERVAL_QUANTILE * error),
        high: back(above + INTERVAL_QUANTILE * error),
      };
    },
  };
}

function quadratic(indices: readonly number[], matrix: readonly Float64Array[], x: readonly number[]): number {
  return indices.reduce((sum, i) => sum + x[i]! * indices.reduce((inner, j) => inner + matrix[i]![j]! * x[j]!, 0), 0);
}

function meanSize(rows: readonly FitRow[]): number {
  const mean = rows.reduce((sum, { value }) => sum + Math.abs(value), 0) / rows.length;
  return mean > 0 ? mean : 1;
}

function byPoint<T>(rows: readonly FitRow[], of: (row: FitRow, r: number) => T): readonly (readonly T[])[] {
  const points = new Map<number, T[]>();
  rows.forEach((row, r) => {
    points.set(row.point, [...(points.get(row.point) ?? []), of(row, r)]);
  });
  return [...points.values()];
}

const tellsInLogs = (rows: readonly FitRow[]): boolean =>
  byPoint(rows, ({ value }) => value).every(
    (values) => Math.min(...values) > 0 && Math.max(...values) < LOG_RANGE * Math.min(...values),
  );

function misfitOf(rows: readonly FitRow[], left: readonly number[], smooth: number): number {
  const points = byPoint(rows, (_, r) => left[r]!);
  const over = points.length - smooth;
  const inside = rows.length - points.length;
  if (over <= 0 || inside <= 0) return 1;
  const means = points.map((one) => one.reduce((sum, x) => sum + x, 0) / one.length);
  const between = points.reduce((sum, one, p) => sum + one.length * means[p]! ** 2, 0);
  const within = points.reduce((sum, one, p) => sum + one.reduce((all, x) => all + (x - means[p]!) ** 2, 0), 0);
  const pure = (FIT_WEIGHT * PRIOR_CHANCE ** 2 * LEAST_PRECISION + within) / inside;
  if (!(pure > 0)) return 1;
  return Math.max(1, (FIT_WEIGHT + between / pure) / (FIT_WEIGHT + over));
}
