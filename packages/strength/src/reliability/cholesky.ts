/** Square roots of symmetric matrices. */

/** A pivot below this share of the largest one is taken as zero: what is left is rounding. */
const TINY = 1e-12;

/** Lower triangular L with L·Lᵀ = the matrix; where that is singular the column is zero. */
export function choleskyRoot(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const scale = Math.max(0, ...matrix.map((row, i) => row[i]!));
  const root = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (let j = 0; j < n; j++) {
    let pivot = matrix[j]![j]!;
    for (let k = 0; k < j; k++) pivot -= root[j]![k]! ** 2;
    if (pivot <= TINY * scale) continue;
    root[j]![j] = Math.sqrt(pivot);
    for (let i = j + 1; i < n; i++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= root[i]![k]! * root[j]![k]!;
      root[i]![j] = sum / root[j]![j]!;
    }
  }
  return root;
}

/** x with matrix · x = right, for a positive definite matrix. */
export function solvePositive(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const root = choleskyRoot(matrix);
  const n = right.length;
  const x = [...right];
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= root[i]![k]! * x[k]!;
    x[i]! /= root[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= root[k]![i]! * x[k]!;
    x[i]! /= root[i]![i]!;
  }
  return x;
}
