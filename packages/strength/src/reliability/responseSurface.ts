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
  /** Of every point: its value less what a surface says that was chosen and fitted without it. */
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
const POINTS_PER_TERM = 2;

/** Fits `values` at `points`, whose coordinates run from −1 to 1. */
export function fitSurface(points: readonly (readonly number[])[], values: ArrayLike<number>): ResponseSurface {
  const terms = candidates(points[0]?.length ?? 0);
  const columns = terms.map((term) => Float64Array.from(points, (point) => termAt(term, point)));
  const y = Float64Array.from(values);
  const whole = fitRows(columns, y, -1);
  const leftOut = y.map((value, row) => value - fitRows(columns, y, row).at((c) => columns[c]![row]!));
  const squares = leftOut.reduce((sum, e) => sum + e * e, 0);
  return {
    value: (point) => whole.at((c) => termAt(terms[c]!, point)),
    terms: whole.chosen.length,
    leftOut,
    error: Math.sqrt(squares / y.length),
    explained: 1 - squares / Math.max(squaresOfLeftOutMeans(y), Number.MIN_VALUE),
  };
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

/** Chooses terms and fits them, with all rows or `without` one. */
function fitRows(columns: readonly Float64Array[], y: Float64Array, without: number): Fitted {
  const rows = (all: Float64Array) => (without < 0 ? all : all.filter((_, r) => r !== without));
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

function chooseTerms(columns: readonly Float64Array[], y: Float64Array): number[] {
  const n = y.length;
  const left = columns.map(centred);
  const sizes = left.map((column) => dot(column, column));
  const residual = centred(y);
  const leverage = new Float64Array(n).fill(1 / n);
  const order: number[] = [];
  let best = { press: press(residual, leverage), count: 0 };
  while (order.length < n / POINTS_PER_TERM && order.length - best.count < PATIENCE) {
    const next = mostExplaining(left, sizes, residual, order);
    if (next < 0) break;
    order.push(next);
    const length = Math.sqrt(dot(left[next]!, left[next]!));
    const q = left[next]!.map((v) => v / length);
    takeOut(residual, q);
    for (let r = 0; r < n; r++) leverage[r]! += q[r]! * q[r]!;
    left.forEach((column, c) => {
      if (!order.includes(c)) takeOut(column, q);
    });
    const now = press(residual, leverage);
    if (now < best.press) best = { press: now, count: order.length };
  }
  return order.slice(0, best.count);
}

/** Index of the term that takes most of the residual away; −1 when none takes any. */
function mostExplaining(
  left: readonly Float64Array[],
  sizes: readonly number[],
  residual: Float64Array,
  taken: readonly number[],
): number {
  let [best, most] = [-1, 0];
  left.forEach((column, c) => {
    if (taken.includes(c)) return;
    const size = dot(column, column);
    // What is left of it is rounding: the terms before it say the same.
    if (size < 1e-9 * sizes[c]!) return;
    const gain = dot(column, residual) ** 2 / size;
    if (gain > most) [best, most] = [c, gain];
  });
  return best;
}

/** Sum of squares of the residuals that every point would have if it were left out. */
function press(residual: Float64Array, leverage: Float64Array): number {
  let sum = 0;
  for (let r = 0; r < residual.length; r++) sum += (residual[r]! / Math.max(1e-6, 1 - leverage[r]!)) ** 2;
  return sum;
}

function takeOut(column: Float64Array, q: Float64Array): void {
  const share = dot(column, q);
  for (let r = 0; r < column.length; r++) column[r]! -= share * q[r]!;
}

function centred(column: Float64Array): Float64Array {
  const mean = column.reduce((sum, v) => sum + v, 0) / column.length;
  return column.map((v) => v - mean);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let r = 0; r < a.length; r++) sum += a[r]! * b[r]!;
  return sum;
}
