/** Square roots of symmetric matrices. */

/** A pivot below this share of the largest one is rounding, and is taken as zero [-]. */
const ZERO_PIVOT_SHARE = 1e-12;

/** Lower triangular L with L·Lᵀ = the matrix; where that is singular the column is zero. */
export function choleskyRoot(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const scale = Math.max(0, ...matrix.map((row, i) => row[i]!));
  const root = Array.from({ length: n }, () => new Array<number>(n).fill(0));
  for (let j = 0; j < n; j++) {
    let pivot = matrix[j]![j]!;
    for (let k = 0; k < j; k++) pivot -= root[j]![k]! ** 2;
    if (pivot <= ZERO_PIVOT_SHARE * scale) continue;
    root[j]![j] = Math.sqrt(pivot);
    for (let i = j + 1; i < n; i++) {
      let sum = matrix[i]![j]!;
      for (let k = 0; k < j; k++) sum -= root[i]![k]! * root[j]![k]!;
      root[i]![j] = sum / root[j]![j]!;
    }
  }
  return root;
}
