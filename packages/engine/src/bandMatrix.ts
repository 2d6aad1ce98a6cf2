/** Symmetric positive definite band matrix, lower half by rows, with an in-place Cholesky solve (Golub & Van Loan, ch. 4.3). */
export class BandMatrix {
  readonly size: number;
  readonly band: number;
  readonly values: Float64Array;

  constructor(size: number, band: number) {
    this.size = size;
    this.band = band;
    this.values = new Float64Array(size * (band + 1));
  }

  /** Adds to entry (row, column) of the lower half; entries of the upper half are the caller's to leave out. */
  add(row: number, column: number, value: number): void {
    const at = row * (this.band + 1) + column - row + this.band;
    this.values[at] = this.values[at]! + value;
  }

  /** Solves (this + shift·I)·x = b into `x`; false when the shifted matrix is not positive definite. */
  solve(b: Float64Array, shift: number, x: Float64Array): boolean {
    const { size, band } = this;
    const width = band + 1;
    const l = Float64Array.from(this.values);
    for (let i = 0; i < size; i++) {
      const row = i * width + band - i;
      const from = Math.max(0, i - band);
      for (let j = from; j <= i; j++) {
        const other = j * width + band - j;
        let sum = l[row + j]! + (i === j ? shift : 0);
        for (let k = Math.max(from, j - band); k < j; k++) sum -= l[row + k]! * l[other + k]!;
        if (i === j) {
          if (!(sum > 0)) return false;
          l[row + j] = Math.sqrt(sum);
        } else l[row + j] = sum / l[other + j]!;
      }
    }
    for (let i = 0; i < size; i++) {
      let sum = b[i]!;
      for (let k = Math.max(0, i - band); k < i; k++) sum -= l[i * width + k - i + band]! * x[k]!;
      x[i] = sum / l[i * width + band]!;
    }
    for (let i = size - 1; i >= 0; i--) {
      let sum = x[i]!;
      for (let k = i + 1; k <= Math.min(size - 1, i + band); k++) sum -= l[k * width + i - k + band]! * x[k]!;
      x[i] = sum / l[i * width + band]!;
    }
    return true;
  }
}
