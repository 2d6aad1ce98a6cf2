/**
 * Linear regression with a normal prior of its own for every coefficient, which the data cannot widen or narrow: y = h·β + ε, β
 * ~ N(0, P) diagonal, ε ~ N(0, R). The weights come from variances that are fixed beforehand. So the answer is linear in y, and
 * a lower test never raises the mean of its own state. The covariance takes the variances that were found (T. W. Anderson, *An
 * Introduction to Multivariate Statistical Analysis*, 2003, sec. 8; Joseph's form of the update).
 */
import { choleskyFactor, choleskyInverse, choleskySolve } from "./symmetricSolve.ts";

/** Prior of one coefficient, about 0. */
export interface Coefficient {
  /** Prior variance with which observations are weighed, above 0. */
  readonly assumed: number;
  /** Prior variance that was found, or the assumed one if none was. */
  readonly found: number;
}

/** One observation, or several with the same coefficients taken as one. */
export interface RegressionRow {
  /** Coefficients whose sum the row is, by index. */
  readonly of: readonly number[];
  readonly y: number;
  /** Variance with which the row is weighed, and the one that was found. */
  readonly assumed: number;
  readonly found: number;
}

/** Solver for the means of the coefficients for any y of the rows. The weights are worked out once. */
export function regressionSolver(
  coefficients: readonly Coefficient[],
  rows: readonly Omit<RegressionRow, "y">[],
): (y: readonly number[]) => Float64Array {
  const factor = choleskyFactor(precision(coefficients, rows));
  return (y) => {
    const right = new Float64Array(coefficients.length);
    rows.forEach(({ of, assumed }, k) => {
      for (const i of of) right[i]! += y[k]! / assumed;
    });
    return choleskySolve(factor, right);
  };
}

/** Weight of every row in the mean of every coefficient: means = gain · y. */
export function regressionGain(
  coefficients: readonly Coefficient[],
  rows: readonly Pick<RegressionRow, "of" | "assumed">[],
): Float64Array[] {
  const inverse = choleskyInverse(choleskyFactor(precision(coefficients, rows)));
  return inverse.map((row) =>
    Float64Array.from(rows, ({ of, assumed }) => of.reduce((sum, i) => sum + row[i]!, 0) / assumed),
  );
}

/** Covariance of the coefficients about their means. */
export function regressionCovariance(
  coefficients: readonly Coefficient[],
  rows: readonly Omit<RegressionRow, "y">[],
): Float64Array[] {
  const n = coefficients.length;
  const inverse = choleskyInverse(choleskyFactor(precision(coefficients, rows)));
  const middle = Array.from({ length: n }, () => new Float64Array(n));
  coefficients.forEach(({ assumed, found }, i) => {
    middle[i]![i] = found / (assumed * assumed);
  });
  for (const { of, assumed, found } of rows) {
    const w = found / (assumed * assumed);
    for (const i of of) for (const j of of) middle[i]![j]! += w;
  }
  const half = inverse.map((row) => rowTimesMatrix(row, middle));
  return half.map((row) => rowTimesMatrix(row, inverse));
}

function rowTimesMatrix(row: Float64Array, matrix: readonly Float64Array[]): Float64Array {
  const out = new Float64Array(row.length);
  for (let k = 0; k < row.length; k++) {
    const [x, other] = [row[k]!, matrix[k]!];
    if (x !== 0) for (let j = 0; j < out.length; j++) out[j]! += x * other[j]!;
  }
  return out;
}

function precision(
  coefficients: readonly Coefficient[],
  rows: readonly Pick<RegressionRow, "of" | "assumed">[],
): Float64Array[] {
  const matrix = coefficients.map(() => new Float64Array(coefficients.length));
  coefficients.forEach(({ assumed }, i) => {
    matrix[i]![i] = 1 / assumed;
  });
  for (const { of, assumed } of rows) {
    for (const i of of) {
      const row = matrix[i]!;
      for (const j of of) row[j]! += 1 / assumed;
    }
  }
  return matrix;
}
