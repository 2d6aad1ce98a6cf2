/**
 * A quadratic polynomial through the results of a costly function. Not every term is worth a coefficient: they are taken
 * one after another, the one that explains most first (orthogonal least squares; S. Chen, S. A. Billings & W. Luo, Int. J.
 * Control 50 (1989) 1873–1896), for as long as that makes the prediction of points left out better (PRESS; D. M. Allen,
 * Technometrics 16 (1974) 125–127).
 */
import { solvePositive } from "./cholesky.ts";

export interface ResponseSurface {
  /** Value at coordinates, −1 to 1 over the fitted range; beyond it, squares go on straight. */
  readonly value: (point: ArrayLike<number>) => number;
  /** How many terms it has besides the constant. */
  readonly terms: number;
  /** Of every point: its value less what a surface says that was chosen and fitted without it (and at most 4 % of the others). */
  readonly leftOut: Float64Array;
  /** Root mean square of `leftOut`. */
  readonly error: number;
  /** Share of the values' variance that points left out are predicted with; 1: all, 0 or less: nothing [-]. */
  readonly explained: number;
}

type Term = readonly [number] | readonly [number, number];

/** Without progress for so many terms on end the search is over. */
const PATIENCE = 4;
/** At least so many points to a coefficient. */
const POINTS_PER_TERM = 3;
/** Points are left out in so many groups at most, one by one when they are fewer. */
const MOST_GROUPS = 24;

/** Fits `values` at `points`, whose coordinates run from −1 to 1. */
export function fitSurface(points: readonly (readonly number[])[], values: ArrayLike<number>): ResponseSurface {
  const terms = candidates(points[0]?.length ?? 0);
  const columns = terms.map((term) => Float64Array.from(points, (point) => termAt(term, point)));
  const y = Float64Array.from(values);
  const whole = fitRows(columns, y, () => true);
  const leftOut = leftOutResiduals(columns, y);
  const squares = leftOut.reduce((sum, e) => sum + e * e, 0);
  return {
    value: (point) => whole.at((c) => termAt(terms[c]!, point)),
    terms: whole.chosen.length,
    leftOut,
    error: Math.sqrt(squares / y.length),
    explained: 1 - squares / Math.max(squaresOfLeftOutMeans(y), Number.MIN_VALUE),
  };
}

/** The terms are chosen anew for every group: a choice that has seen a point already is no prediction of it. */
function leftOutResiduals(columns: readonly Float64Array[], y: Float64Array): Float64Array {
  const residuals = new Float64Array(y.length);
  const groups = Math.min(MOST_GROUPS, y.length);
  for (let group = 0; group < groups; group++) {
    const fitted = fitRows(columns, y, (row) => row % groups !== group);
    for (let row = group; row < y.length; row += groups) {
      residuals[row] = y[row]! - fitted.at((c) => columns[c]![row]!);
    }
  }
  return residuals;
}

function candidates(dimension: number): Term[] {
  const terms: Term[] = [];
  for (let i = 0; i < dimension; i++) terms.push([i]);
  for (let i = 0; i < dimension; i++) for (let j = i; j < dimension; j++) terms.push([i, j]);
  return terms;
}

/** Legendre polynomials, which hardly correlate over an evenly filled range. */
function termAt(term: Term, point: ArrayLike<number>): number {
  const a = point[term[0]]!;
  if (term.length === 1) return a;
  return term[0] === term[1] ? square(Math.abs(a)) : a * point[term[1]]!;
}

/** Beyond the range along the tangent: nobody has seen what the square would do there. */
const square = (x: number) => (x <= 1 ? 1.5 * x * x - 0.5 : 3 * x - 2);

/** What predicting every point by the mean of the others would leave. */
function squaresOfLeftOutMeans(y: Float64Array): number {
  const n = y.length;
  const mean = y.reduce((sum, v) => sum + v, 0) / n;
  return y.reduce((sum, v) => sum + (((v - mean) * n) / (n - 1)) ** 2, 0);
}

interface Fitted {
  readonly chosen: readonly number[];
  readonly at: (column: (c: number) => number) => number;
}

/** Chooses terms and fits them to the rows to keep. */
function fitRows(columns: readonly Float64Array[], y: Float64Array, keep: (row: number) => boolean): Fitted {
  const rows = (all: Float64Array) => all.filter((_, row) => keep(row));
  const kept = columns.map(rows);
  const values = rows(y);
  const chosen = chooseTerms(kept, values);
  const basis = [new Float64Array(values.length).fill(1), ...chosen.map((c) => kept[c]!)];
  const coefficients = solvePositive(
    basis.map((a) => basis.map((b) => dot(a, b))),
    basis.map((a) => dot(a, values)),
  );
  return {
    chosen,
    at: (column) => chosen.reduce((sum, c, k) => sum + coefficients[k + 1]! * column(c), coefficients[0]!),
  };
}

/** A term not yet taken: what of it is orthogonal to those taken, with its size now and at first. */
interface Candidate {
  readonly term: number;
  readonly left: Float64Array;
  readonly atFirst: number;
  size: number;
}

function chooseTerms(columns: readonly Float64Array[], y: Float64Array): number[] {
  const n = y.length;
  const residual = centred(y);
  const leverage = new Float64Array(n).fill(1 / n);
  const order: number[] = [];
  let open = columns.map((column, term): Candidate => {
    const left = centred(column);
    const size = dot(left, left);
    return { term, left, atFirst: size, size };
  });
  let best = { press: press(residual, leverage), count: 0 };
  while (order.length < n / POINTS_PER_TERM && order.length - best.count < PATIENCE) {
    const next = mostExplaining(open, residual);
    if (!next) break;
    order.push(next.term);
    open = open.filter((one) => one !== next);
    const length = Math.sqrt(dot(next.left, next.left));
    const q = next.left.map((v) => v / length);
    takeOut(residual, q);
    for (let r = 0; r < n; r++) leverage[r]! += q[r]! * q[r]!;
    for (const one of open) one.size -= takeOut(one.left, q) ** 2;
    const now = press(residual, leverage);
    if (now < best.press) best = { press: now, count: order.length };
  }
  return order.slice(0, best.count);
}

/** The term that takes most of the residual away; undefined when none takes any. */
function mostExplaining(open: readonly Candidate[], residual: Float64Array): Candidate | undefined {
  let best: Candidate | undefined;
  let most = 0;
  for (const one of open) {
    // What is left of it is rounding: the terms before it say the same.
    if (one.size < 1e-9 * one.atFirst) continue;
    const gain = dot(one.left, residual) ** 2 / one.size;
    if (gain > most) [best, most] = [one, gain];
  }
  return best;
}

/** Sum of squares of the residuals that every point would have if it were left out. */
function press(residual: Float64Array, leverage: Float64Array): number {
  let sum = 0;
  for (let r = 0; r < residual.length; r++) sum += (residual[r]! / Math.max(1e-6, 1 - leverage[r]!)) ** 2;
  return sum;
}

/** Takes the direction `q` out of a column; returns how much there was of it. */
function takeOut(column: Float64Array, q: Float64Array): number {
  const share = dot(column, q);
  for (let r = 0; r < column.length; r++) column[r]! -= share * q[r]!;
  return share;
}

/** Values less their mean. */
export function centred(column: Float64Array): Float64Array {
  const mean = column.reduce((sum, v) => sum + v, 0) / column.length;
  return column.map((v) => v - mean);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let r = 0; r < a.length; r++) sum += a[r]! * b[r]!;
  return sum;
}
